package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/** A trace under way: the step, the causes beside it, the answers below, cautions on top. */
final class TracingPanel extends JPanel {
  private static final int LEAST_WIDTH = 800;
  private final transient TraceModel model;
  private final CheckCard check;
  private final MendCard mend;
  private final YardCard yard;
  private final MendedCard mended;
  private final CardLayout cards = new CardLayout();
  private final JPanel steps = new JPanel(cards);
  private final Wrapped what = Text.heading("");
  private final TrailPanel trail;
  private final CausesPanel causes;
  private final transient TrailSlots slots;
  private final CautionBand band;
  private final transient Runnable saveTrace;
  private Sides sides;
  private String shown = "";

  TracingPanel(
      TraceModel model,
      CheckCard check,
      MendCard mend,
      YardCard yard,
      MendedCard mended,
      CausesPanel causes,
      Runnable saveTrace,
      Divider.Memory dividers) {
    super(new BorderLayout(0, 10));
    this.model = model;
    this.check = check;
    this.mend = mend;
    this.yard = yard;
    this.mended = mended;
    this.causes = causes;
    this.saveTrace = saveTrace;
    this.trail = new TrailPanel(model);
    this.band = new CautionBand(model);
    this.slots = new TrailSlots(trail, steps, causes);
    setBorder(BorderFactory.createEmptyBorder(12, 18, 12, 18));
    steps.setOpaque(false);
    steps.add(check, Stage.CHECK.name());
    steps.add(mend, Stage.MEND.name());
    steps.add(yard, Stage.YARD.name());
    steps.add(mended, Stage.MENDED.name());
    add(top(), BorderLayout.NORTH);
    add(middle(dividers), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent top() {
    JButton again = Buttons.plain("Start again", model::startAgain);
    again.setName("start-again");
    again.setToolTipText("Takes all answers back");
    JButton other = Buttons.plain("Another symptom", model::leave);
    other.setName("another-symptom");
    other.setToolTipText("This trace stays as it is");
    JButton save = Buttons.plain("Save trace as PDF …", saveTrace);
    save.setName("save-trace");
    save.setToolTipText("Where this trace stands, as a sheet to print");
    Column top = new Column(8);
    top.add(Row.growing(12, 0, what, save, other, again));
    top.add(band);
    return top;
  }

  private JComponent middle(Divider.Memory dividers) {
    sides =
        new Sides(
            LEAST_WIDTH,
            "Next step",
            slots.left(),
            "Causes and answers",
            slots.right(),
            "trace-causes",
            0.68,
            dividers);
    sides.onFold(this::fold);
    slots
        .left()
        .addComponentListener(
            new ComponentAdapter() {
              @Override
              public void componentResized(ComponentEvent e) {
                place(model.stage());
              }
            });
    return sides;
  }

  private void place(Stage stage) {
    slots.place(stage, sides.isNarrow());
  }

  private void fold() {
    band.brief(sides.isNarrow());
    place(model.stage());
  }

  List<JComponent> regions() {
    return List.of(steps, trail, causes);
  }

  /** The control that takes the focus when a step comes up. */
  Optional<JButton> first() {
    return switch (model.stage()) {
      case CHECK -> check.first();
      case MEND -> Optional.of(mend.first());
      case YARD -> Optional.of(yard.first());
      case MENDED -> Optional.of(mended.first());
      default -> Optional.empty();
    };
  }

  private void refresh() {
    Stage stage = model.stage();
    Optional<Trace> trace = model.trace();
    if (trace.isEmpty() || stage.ordinal() < Stage.CHECK.ordinal()) {
      return;
    }
    Boat boat = trace.get().fault().fitting().boat();
    what.setText(trace.get().fault().page().title() + ", on " + boat.name());
    fill(trace.get(), stage);
    String step = stage + model.step().map(NextStep::id).orElse("");
    if (!step.equals(shown)) {
      shown = step;
      sides.showMain();
    }
    cards.show(steps, stage.name());
    place(stage);
  }

  private void fill(Trace trace, Stage stage) {
    NextStep step = model.step().orElseThrow();
    if (stage == Stage.MENDED) {
      mended.show(trace, model.mended());
    } else if (step instanceof NextStep.DoCheck doCheck) {
      check.show(trace, doCheck);
    } else if (step instanceof NextStep.DoMend doMend) {
      mend.show(trace, doMend);
    } else if (step instanceof NextStep.CallYard callYard) {
      yard.show(trace, callYard);
    }
  }
}
