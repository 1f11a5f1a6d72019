package limberboard.desktop.write.symptom;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.trace.Trace;
import limberboard.trace.review.TriedCause;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * Each cause as it would be traced: a cause is chosen, every answer is the likeliest for it, and
 * the steps are told one after the other to the end.
 */
final class TryView extends JPanel {
  private final Wrapped state = Text.plain("");
  private final CardList<Line> list = new CardList<>("Causes to try", Line::card);
  private boolean firstWanted;
  private transient List<TriedCause> tried = List.of();
  private transient Optional<String> open = Optional.empty();

  /** A cause, or a step of the one that is open. */
  private record Line(String cause, int step, Card card, Optional<Trace> at) {}

  /**
   * A list.
   *
   * @param stand is told where the trace stands at the selected step
   */
  TryView(Consumer<Trace> stand) {
    super(new BorderLayout(0, 6));
    list.addListSelectionListener(
        e -> {
          if (!e.getValueIsAdjusting() && list.hasFocus()) {
            list.selected().flatMap(Line::at).ifPresent(stand);
          }
        });
    setOpaque(false);
    list.setName("symptom-try");
    list.onChoose(line -> turn(line.cause()));
    Keys.focused(list, "SPACE", list::chooseSelected);
    state.setName("symptom-try-state");
    Column top = new Column(4).padded(4, 4, 0, 4);
    top.add(state);
    add(top, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
  }

  private void turn(String cause) {
    open = open.equals(Optional.of(cause)) ? Optional.empty() : Optional.of(cause);
    fill();
    list.entries().stream()
        .filter(line -> line.cause().equals(cause))
        .findFirst()
        .ifPresent(line -> list.setSelectedValue(line, true));
  }

  /** Opens the first cause, as soon as there is one. */
  void openFirst() {
    firstWanted = tried.isEmpty();
    tried.stream().findFirst().ifPresent(each -> turn(each.cause().id()));
  }

  void show(SymptomModel model) {
    boolean other = !tried.equals(model.tried());
    tried = model.tried();
    long lost = tried.stream().filter(each -> !each.isFound()).count();
    String found =
        lost == 0
            ? "Every cause is found when it is there."
            : CountWords.of(lost, "cause") + " of " + tried.size() + " would not be found.";
    state.setText(
        model.fault().isEmpty()
            ? model.treeNote()
            : model.isWorking()
                ? "Each cause is being played …"
                : found + " Choose one to see the way.");
    if (other) {
      fill();
    }
    if (firstWanted) {
      openFirst();
    }
  }

  private void fill() {
    List<Line> lines = new ArrayList<>();
    for (TriedCause each : tried) {
      lines.add(new Line(each.cause().id(), 0, head(each), Optional.of(each.steps().get(0).at())));
      if (open.equals(Optional.of(each.cause().id()))) {
        first(each).ifPresent(lines::add);
        for (int i = 0; i < each.steps().size(); i++) {
          Optional<Trace> at = Optional.of(each.steps().get(i).at());
          lines.add(new Line(each.cause().id(), i + 1, step(each, i), at));
        }
        lines.add(
            new Line(each.cause().id(), each.steps().size() + 1, end(each), Optional.empty()));
      }
    }
    list.show(lines);
    list.refreshHeights();
  }

  /** The cautions that come before any question. */
  private static Optional<Line> first(TriedCause tried) {
    Trace trace = tried.steps().get(0).at();
    String said = cautions(trace.fault().first());
    Card card = Card.of("Before anything", said);
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(new Line(tried.cause().id(), -1, card, Optional.of(trace)));
  }

  private static Card head(TriedCause tried) {
    String end =
        switch (tried.end()) {
          case MENDED -> "Found, and mended by the owner";
          case YARD_TOLD -> "Found, and handed to the yard";
          case YARD_SEARCHES -> "Not found: the yard has to look for it";
          case LOST -> "Not found";
        };
    return Card.of(
        tried.cause().title(),
        end
            + ": "
            + CountWords.of(tried.steps().size(), "step")
            + ", "
            + Minutes.words(tried.minutes())
            + ".");
  }

  private static Card step(TriedCause tried, int number) {
    TriedCause.Step step = tried.steps().get(number);
    String found = step.finding().isEmpty() ? "" : Sentences.capital(step.finding()) + ". ";
    return Card.of(
            (number + 1) + ". " + step.step().text(),
            found + "Then " + PerCent.words(step.chance()) + " that it is this.")
        .ofKind(Minutes.words(step.minutes()))
        .noting(cautions(step.step().cautions()));
  }

  private static Card end(TriedCause tried) {
    String told = tried.named().map(cause -> cause.title()).orElse("nothing");
    return Card.of(
            switch (tried.end()) {
              case MENDED -> "Mended";
              case YARD_TOLD -> "The yard is told: " + told;
              case YARD_SEARCHES -> "The yard is told something else: " + told;
              case LOST -> "Nothing is left to try";
            },
            "In all " + Minutes.words(tried.minutes()) + ", an estimate.")
        .second();
  }

  /** The danger and the rule of each, before the step it is for. */
  private static String cautions(List<WorkCaution> cautions) {
    return cautions.stream()
        .map(each -> "Caution: " + each.title() + ". " + each.danger() + " " + each.rule())
        .collect(Collectors.joining("\n"));
  }

  JComponent first() {
    return list;
  }
}
