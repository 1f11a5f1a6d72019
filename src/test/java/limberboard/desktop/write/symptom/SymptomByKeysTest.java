package limberboard.desktop.write.symptom;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.boat.Workspace;
import limberboard.desktop.look.ThemeChoice;
import limberboard.library.page.Kind;
import limberboard.library.problem.Problem;
import limberboard.trace.review.PageReview;
import limberboard.trace.review.TriedCause;
import limberboard.writing.PageText;
import limberboard.writing.start.BegunPage;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A new symptom made by keyboard alone: an outline, the table, until nothing is to be mended and
 * every cause is found. Needs a display; a virtual one will do.
 */
@Timeout(300)
class SymptomByKeysTest {
  private static final String ID = "diesel-stops";
  private static final String OUTLINE =
      """
      Causes
      The fuel filter is clogged (6)
      Water has got into the fuel (3)
      The stop control does not go back (2)
      The propeller is caught in weed or rope (4)
      The raw-water impeller has lost its blades (4)
      The thermostat stays shut (2)
      Checks
      How did it stop? slowly, at once (1)
      Did the alarm for heat sound? yes, no (1)
      Does water come out of the exhaust? plenty, hardly any (2)
      What is in the bowl of the filter? water, clear fuel (5)
      Does the shaft turn by hand? turns, stuck (5)
      Does the stop lever go all the way back? yes, no (3)
      Does it run again after a rest? yes, no (10)
      Is the hose warm on both sides of the thermostat? both, one (5)
      """
          .strip();

  private static final List<String> MENDS =
      List.of("fuel filt", "water and dirt", "lever", "propeller, n", "raw-water imp", "thermost");
  private static final List<String> HOW =
      List.of(
          "Ask who was on deck.",
          "Ask, and look at the panel.",
          "Start it and look over the stern.",
          "Look through the glass with a torch.",
          "Key out, gear in neutral, turn the shaft by hand.",
          "Pull it and let go, and watch it at the engine.",
          "Wait a quarter of an hour and start it.",
          "Let it cool until you can touch it, then feel the hose.");

  /** For the first answer of each check, how likely it is under each cause, by one key each. */
  private static final List<String> WORDS =
      List.of("850066", "000099", "999909", "290000", "999099", "990999", "646056", "999990");

  private static void needsDisplay() {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(),
        "There is no display, so the symptom's editor is not tested. Run: xvfb-run -a mvn verify");
  }

  @Test
  void aSymptomIsMadeOfAnOutlineUntilNothingIsWrongAndEveryCauseIsFound(@TempDir Path folder)
      throws IOException {
    needsDisplay();
    try (SymptomFrame frame =
        new SymptomFrame(folder, new Dimension(1280, 800), ThemeChoice.LIGHT, 100)) {
      frame.show(ID, BegunPage.of(Kind.SYMPTOM, "A new symptom", ID).text());
      frame.until("the outline has the focus", () -> frame.panel().first().isFocusOwner());
      write(frame);
      int keys = frame.pressed();
      frame.settle();
      assertThat(frame.ask(() -> frame.model().findings()))
          .filteredOn(each -> each.rank() != SymptomFinding.Rank.PLAN)
          .isEmpty();
      List<TriedCause> tried = frame.ask(() -> frame.model().tried());
      assertThat(tried).hasSize(6).allMatch(TriedCause::isFound);
      PageText page = frame.ask(() -> frame.model().page());
      assertThat(frame.changes().get(frame.changes().size() - 1)).isEqualTo(page);
      Files.write(frame.file(ID), page.bytes());
      assertThat(validated(frame.read())).isEmpty();
      assertThat(frame.failures()).isEmpty();
      System.out.println(
          "A symptom of six causes and eight checks from an outline: "
              + keys
              + " keys, an estimated "
              + Math.round(keys / 100.0)
              + " minutes at 100 keys a minute.");
      assertThat(keys).isLessThan(1700);
    }
  }

  /** What {@code validate} says of the page. */
  private static List<String> validated(Workspace workspace) {
    List<String> said =
        new java.util.ArrayList<>(
            workspace.problems().stream()
                .filter(each -> each.file().endsWith(ID + ".md"))
                .map(Problem::toString)
                .toList());
    PageReview.of(workspace.library().symptom(ID).orElseThrow(), workspace, SymptomFrame.TODAY)
        .warnings()
        .forEach(each -> said.add(each.wrong()));
    return said;
  }

  /** Everything that is typed. */
  static void write(SymptomFrame frame) {
    frame.type(OUTLINE);
    frame.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    frame.until(
        "the table is there",
        () -> frame.panel().first().getName().equals("symptom-table") && focused(frame));
    frame.press(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
    frame.type("The diesel stops by itself\n");
    frame.type("engine-c\n");
    frame.press(KeyEvent.VK_DOWN);
    MENDS.forEach(mend -> frame.type(mend + "\n"));
    frame.press(KeyEvent.VK_RIGHT);
    frame.repeat(8, KeyEvent.VK_UP);
    for (String how : HOW) {
      frame.type(how);
      frame.press(KeyEvent.VK_TAB);
    }
    frame.press(KeyEvent.VK_HOME);
    frame.repeat(3, KeyEvent.VK_DOWN);
    for (String words : WORDS) {
      frame.type(words);
      frame.press(KeyEvent.VK_RIGHT);
    }
  }

  private static boolean focused(SymptomFrame frame) {
    return frame.panel().first().isFocusOwner();
  }
}
