package limberboard.desktop.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PagePictures;
import limberboard.desktop.support.Steps;
import limberboard.desktop.trace.PageTitles;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillRun;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.drill.learn.NextDrill;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every caution of a step stands on its card in short, for every symptom and boat of the demo. */
class StepCardTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 15);
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(), "There is no display, so the cards are not looked at.");
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static List<String> words(Container within) {
    List<String> words = new ArrayList<>();
    for (Component each : within.getComponents()) {
      if (each instanceof Wrapped text && text.isVisible()) {
        words.add(text.getText());
      } else if (each instanceof Container nested && each.isVisible()) {
        words.addAll(words(nested));
      }
    }
    return words;
  }

  @Test
  void everyCautionStandsInShortBeforeTheQuestion() throws Exception {
    WorkspaceDrills drills = new WorkspaceDrills(workspace, TODAY);
    int[] seen = {0};
    for (NextDrill.Can can : drills.can()) {
      Drill drill = drills.drill(new DrillOrder(can.symptom(), can.boat(), TODAY, 1, 0));
      SwingUtilities.invokeAndWait(() -> seen[0] += cards(drill));
    }
    assertThat(seen[0]).isGreaterThan(500);
  }

  private static int cards(Drill drill) {
    Notices notices = new Notices();
    DrillModel model = new DrillModel(Steps.atOnce(notices), notices, Guard.NONE);
    model.begin(Optional.empty(), () -> drill);
    model.letterRead();
    StepCard card =
        new StepCard(
            model,
            new PagePictures(Pictures.none()),
            Steps.atOnce(),
            new PageTitles(new Session(java.time.Clock.systemUTC(), Optional.empty())),
            () -> {});
    DrillRun run = model.run().orElseThrow();
    int seen = 0;
    for (StepOffer offer : new StepOffers(run).all()) {
      card.show(run, offer);
      List<String> words = words(card);
      List<WorkCaution> wanted = WorkCautions.ofStep(drill.fault().first(), offer.cautions());
      for (WorkCaution caution : wanted) {
        assertThat(words)
            .as("%s, %s", drill.order(), offer.key())
            .contains(caution.danger().replace(" %", "\u00a0%"), caution.rule());
        assertThat(words.indexOf(caution.danger())).isLessThan(words.lastIndexOf(offer.title()));
        seen++;
      }
    }
    return seen;
  }
}
