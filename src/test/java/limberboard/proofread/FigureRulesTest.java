package limberboard.proofread;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules about figures and steps, on pages that break them and on pages that come close. */
class FigureRulesTest {
  @TempDir Path folder;
  private ProofreadPages pages;

  @BeforeEach
  void makePages() {
    pages = new ProofreadPages(folder);
  }

  @Test
  void pagesThatLinkGiveOneFigure() {
    pages.work("one", "", "1. Hose the hatch for five minutes. See [two](two.md).");
    pages.work("two", "", "1. Hose the hatch for 1 minute.");
    pages.work("three", "", "1. Hose the hatch for 5 min.");
    assertThat(pages.found("two-figures", "two")).containsExactly("8 how long a hatch is hosed");
    assertThat(pages.found("two-figures", "one")).isEmpty(); // more pages have its figure
    assertThat(pages.proof("two").open().get(0).wrong())
        .contains("“1 minute”", "“five minutes”", "articles/procedures/one.md");
  }

  @Test
  void pagesThatHaveNothingToDoWithOneAnotherMayDiffer() {
    pages.work("one", "", "1. Hose the hatch for five minutes.");
    pages.work("two", "", "1. Hose the hatch for 1 minute.");
    assertThat(pages.found("two-figures", "one")).isEmpty();
    assertThat(pages.found("two-figures", "two")).isEmpty();
  }

  @Test
  void aSharedMaterialIsEnough() {
    String glue = "materials: [{use: glue, amount: 1 ml}]\n";
    pages.work("one", glue, "1. Hose the hatch for ten minutes. Neoprene glue.");
    pages.work("two", glue, "1. Hose the hatch for 2 to 3 minutes. Neoprene glue.");
    assertThat(pages.found("two-figures", "one")).isNotEmpty();
  }

  @Test
  void rangesThatMeetAndOtherFiguresAgree() {
    pages.work("one", "", "1. Hose the hatch for 4 to 6 minutes. See [two](two.md).");
    pages.work("two", "", "1. Hose the hatch for five minutes, a second man inside.");
    pages.work("long", "", "1. Hose the hatch, then leave it for 24 h. See [two](two.md).");
    assertThat(pages.found("two-figures", "one")).isEmpty();
    assertThat(pages.found("two-figures", "two")).isEmpty();
    assertThat(pages.found("two-figures", "long")).isEmpty();
  }

  @Test
  void aStepHoldsThreeActionsAtMost() {
    pages.work("break", "", "1. Wipe it, lay the strip, press it down and hold it for a minute.");
    pages.work("close", "", "1. Wipe it, lay the strip and press it down. The hold is dry.");
    assertThat(pages.found("many-actions", "break")).containsExactly("8 step 1");
    assertThat(pages.found("many-actions", "close")).isEmpty();
  }

  @Test
  void minutesCoverTheWaitsInTheSteps() {
    String steps = "1. Wait ten minutes.\n2. Wait for 15 minutes.";
    pages.work("break", "minutes: 10\n", steps);
    pages.work("close", "minutes: 25\n", steps);
    pages.work("overnight", "minutes: 10\n", "1. Leave it for 24 h.\n2. Never wait ten minutes.");
    assertThat(pages.found("minutes", "break")).containsExactly("5 minutes");
    assertThat(pages.found("minutes", "close")).isEmpty();
    assertThat(pages.found("minutes", "overnight")).isEmpty();
  }

  @Test
  void ofSectionsForSomeBoatsTheLongestCounts() {
    String header =
        "minutes: 20\nonly-for:\n  Packed: {fitted: seal-packed}\n  Lip: {fitted: seal-lip}\n";
    String body = "## Packed\n\n1. Wait 15 minutes.\n\n## Lip\n\n2. Wait 15 minutes.";
    pages.work("close", header, body);
    assertThat(pages.found("minutes", "close")).isEmpty();
    pages.work("break", "minutes: 20\n", body);
    assertThat(pages.found("minutes", "break")).containsExactly("5 minutes");
  }
}
