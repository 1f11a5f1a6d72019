package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.StepDone;
import limberboard.words.Minutes;

/** Beside the work: what was done and found, the owner's letter, the boat. */
final class WorkSide extends JPanel {
  private final DrawnBoat drawing;
  private final Wrapped letter = Text.plain("");
  private final Wrapped facts = Text.quiet("");
  private final Wrapped none = Text.plain("Nothing yet.");
  private final CardList<Line> log;
  private final Column all = new Column(8).padded(0, 8, 8, 6);
  private transient Optional<DrillRun> shown = Optional.empty();

  /** A line of what was done; the number tells equal ones apart. */
  private record Line(int number, String title, String said, String took) {}

  WorkSide(DrawnBoat drawing) {
    super(new BorderLayout());
    this.drawing = drawing;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder());
    log =
        new CardList<>(
            "What was done and found",
            line -> Card.of(line.title(), line.said()).ofKind(line.took()));
    log.setName("drill-log");
    all.add(Text.heading("Done and found"));
    all.add(none);
    all.add(log);
    all.add(Text.heading("The owner\u2019s letter"));
    all.add(letter);
    all.add(drawing);
    all.add(facts);
    add(all.scrolling());
  }

  void show(DrillRun run) {
    if (shown.filter(before -> before == run).isPresent()) {
      return;
    }
    shown = Optional.of(run);
    Boat boat = run.drill().fault().fitting().boat();
    letter.setText(String.join("\n", run.drill().letter()));
    facts.setText(LetterSheet.facts(boat));
    drawing.show(boat, run.drill().fault().page().head().zones());
    List<Line> lines =
        IntStream.range(0, run.done().size())
            .map(i -> run.done().size() - 1 - i)
            .mapToObj(i -> line(run, i))
            .toList();
    log.show(lines);
    log.refreshHeights();
    none.setVisible(lines.isEmpty());
    log.setVisible(!lines.isEmpty());
    all.revalidate();
    all.repaint();
  }

  private static Line line(DrillRun run, int number) {
    StepDone done = run.done().get(number);
    boolean free = done.step() instanceof DrillStep.Heed || done.step() instanceof DrillStep.Hint;
    return new Line(
        number,
        StepOffers.title(run, done.step()),
        StepOffers.said(done),
        free ? "" : Minutes.words(done.minutes()));
  }

  JComponent first() {
    return log;
  }
}
