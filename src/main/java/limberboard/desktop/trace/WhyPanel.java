package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.trace.Alternative;
import limberboard.trace.NextStep;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/** Why a step comes next: everything that could be done, and what each answer would do. */
final class WhyPanel extends JPanel {
  private static final int LEAST_WIDTH = 760;
  private final transient TraceModel trace;
  private final transient WhyModel model;
  private final transient Runnable toStep;
  private final Wrapped reason = Text.plain("");
  private final Wrapped proven = Text.strong("");
  private final Column remarks = new Column(4);
  private final CardList<Alternative> options = new CardList<>("What could be done", this::card);
  private final Wrapped question = Text.heading("");
  private final Wrapped working = Text.quiet("");
  private final EffectTable table = new EffectTable();
  private final JButton instead;

  /**
   * A panel.
   *
   * @param trace the trace
   * @param model the reasons
   * @param toStep shows the step again
   * @param dividers remembers where the divider stands
   */
  WhyPanel(TraceModel trace, WhyModel model, Runnable toStep, Divider.Memory dividers) {
    super(new BorderLayout(0, 10));
    this.trace = trace;
    this.model = model;
    this.toStep = toStep;
    setOpaque(false);
    options.setName("options");
    options.framed().onChoose(option -> model.choose(option.step()));
    options.addListSelectionListener(
        e -> options.selected().ifPresent(option -> model.choose(option.step())));
    instead = Buttons.plain("", "do-instead", this::instead);
    proven.setName("proven");
    Column top = new Column(4);
    top.add(reason);
    top.add(proven);
    top.add(remarks);
    add(top, BorderLayout.NORTH);
    add(
        new Sides(
            LEAST_WIDTH,
            "What could be done",
            left(),
            "What each answer would do",
            right(),
            "why-options",
            0.36,
            dividers),
        BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent left() {
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    Column head = new Column(2);
    head.add(Text.heading("What could be done, the best first"));
    left.add(head, BorderLayout.NORTH);
    left.add(options.scrolling(), BorderLayout.CENTER);
    return left;
  }

  private JComponent right() {
    JScrollPane scroller = new JScrollPane(table);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    Column head = new Column(4);
    head.add(question);
    head.add(working);
    Column foot = new Column(4);
    foot.add(Row.wrapping(8, instead));
    JPanel right = new JPanel(new BorderLayout(0, 8));
    right.setOpaque(false);
    right.add(head, BorderLayout.NORTH);
    right.add(scroller, BorderLayout.CENTER);
    right.add(foot, BorderLayout.SOUTH);
    return right;
  }

  List<JComponent> regions() {
    return List.of(options, table);
  }

  private Card card(Alternative option) {
    NextStep step = option.step();
    boolean shown = model.proposed().filter(now -> isSame(now, step)).isPresent();
    return Card.of(
            step.text(),
            (step.minutes() > 0 ? "Takes " + Minutes.words(step.minutes()) + ". " : "")
                + "In all about "
                + Minutes.words(option.expectedMinutes())
                + " from here.")
        .ofKind(Sentences.capital(step.kind()))
        .noting(shown ? "This is the step that is shown." : "");
  }

  private static boolean isSame(NextStep one, NextStep other) {
    return one.which().equals(other.which());
  }

  private void refresh() {
    if (!options.entries().equals(model.options())) {
      options.show(model.options());
    }
    model
        .options()
        .forEach(
            option -> {
              if (model.chosen().filter(step -> isSame(step, option.step())).isPresent()
                  && !options.selected().equals(Optional.of(option))) {
                options.setSelectedValue(option, true);
              }
            });
    reason.setText(model.proposed().map(this::because).orElse(""));
    proven.setText(model.proven().orElse(""));
    remarks.removeAll();
    model.trace().ifPresent(at -> RemarkBox.addTo(remarks, at));
    question.setText(model.chosen().map(NextStep::text).orElse(""));
    working.setText(explained());
    table.show(model.chosen().map(NextStep::kind).orElse(""), model.effects());
    boolean other =
        model.chosen().isPresent()
            && model.proposed().filter(now -> isSame(now, model.chosen().get())).isEmpty();
    instead.setVisible(other);
    instead.setText("Do this instead");
    revalidate();
    repaint();
  }

  private String because(NextStep step) {
    return "Why this "
        + (step instanceof NextStep.CallYard ? "goes to the yard" : Sentences.spoken(step.kind()))
        + ": "
        + step.why();
  }

  private String explained() {
    if (model.isWorking()) {
      return "Being worked out …";
    }
    return model.effects().isEmpty()
        ? "Handing it over ends the trace: there is no answer to wait for."
        : model.chosen().filter(NextStep.DoMend.class::isInstance).isPresent()
            ? "How it can turn out, and what would come then:"
            : "What each answer would do:";
  }

  private void instead() {
    model
        .chosen()
        .ifPresent(
            step -> {
              toStep.run();
              trace.pick(step);
            });
  }
}
