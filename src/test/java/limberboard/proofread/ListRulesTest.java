package limberboard.proofread;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules about lists, each on a page that breaks it and on pages that come close. */
class ListRulesTest {
  @TempDir Path folder;
  private ProofreadPages pages;

  @BeforeEach
  void makePages() {
    pages = new ProofreadPages(folder);
  }

  @Test
  void whatAStepTakesIsListed() {
    pages.work("break", "", "1. Put a film of neoprene glue on both ends.");
    assertThat(pages.found("not-listed", "break")).containsExactly("8 neoprene glue");
    pages.work("listed", "materials: [{use: glue, amount: 1 ml}]\n", "1. A film of neoprene glue.");
    assertThat(pages.found("not-listed", "listed")).isEmpty();
  }

  @Test
  void aToolGoesByThePhrasesPeopleUse() {
    pages.work("break", "", "1. Hold it with a click wrench.");
    assertThat(pages.found("not-listed", "break")).containsExactly("8 click wrench");
  }

  @Test
  void aFurtherNameNamesAndACommonOneDoesNot() {
    pages.work("break", "", "1. Rub it with polishing paste.");
    pages.work("close", "", "1. Rub it with paste.");
    assertThat(pages.found("not-listed", "break")).containsExactly("8 polishing paste");
    assertThat(pages.found("not-listed", "close")).isEmpty();
  }

  @Test
  void whatIsDeniedOrLeftToOthersIsNotTaken() {
    pages.work("denied", "", "1. Press it on without any neoprene glue.");
    pages.work("old", "", "1. Take the old neoprene glue off.");
    pages.work("yard", "", "1. The yard takes neoprene glue.");
    pages.work("comma", "", "1. No neoprene, glue it.");
    assertThat(pages.found("not-listed", "denied")).isEmpty();
    assertThat(pages.found("not-listed", "old")).isEmpty();
    assertThat(pages.found("not-listed", "yard")).isEmpty();
    assertThat(pages.found("not-listed", "comma")).isEmpty();
  }

  @Test
  void aSparePartIsTakenOnlyWhereItIsNew() {
    pages.work("break", "", "1. Lay a new gasket strip.");
    pages.work("close", "", "1. Look at the gasket strip.");
    assertThat(pages.found("not-listed", "break")).containsExactly("8 gasket strip");
    assertThat(pages.found("not-listed", "close")).isEmpty();
  }

  @Test
  void whatAPageThatIsLinkedToListsIsNotMissed() {
    pages.work("other", "materials: [{use: glue, amount: 1 ml}]\n", "1. Neoprene glue.");
    pages.work("close", "", "1. As with [neoprene glue on the lid](other.md).");
    assertThat(pages.found("not-listed", "close")).isEmpty();
  }

  @Test
  void whatIsListedIsUsed() {
    pages.work(
        "break", "tools: [torque-wrench, drill-set]\n", "1. Tighten to 8 N·m by the wrench.");
    assertThat(pages.found("not-used", "break")).containsExactly("5 drill-set");
    pages.work("close", "tools: [drill-set]\n", "1. Countersink the rim.");
    assertThat(pages.found("not-used", "close")).isEmpty();
  }

  @Test
  void whatIsCarriedAnywayNeedsNoStep() {
    pages.tool("torch", "Torch", "lamp");
    pages.work("close", "tools: [torch]\n", "1. Look at it.");
    assertThat(pages.found("not-used", "close")).containsExactly("5 torch");
    pages.words("carried: [torch]\n");
    assertThat(pages.found("not-used", "close")).isEmpty();
  }

  @Test
  void aTorqueTakesATorqueWrench() {
    pages.work("break", "", "1. Tighten to 8 N·m.");
    pages.work("close", "", "1. Tighten by hand, about 2 N·m.");
    pages.work("listed", "tools: [torque-wrench]\n", "1. Tighten to 8 N·m.");
    assertThat(pages.found("no-tool", "break")).containsExactly("8 torque-wrench");
    assertThat(pages.found("no-tool", "close")).isEmpty();
    assertThat(pages.found("no-tool", "listed")).isEmpty();
  }

  @Test
  void whatHasNoPageIsMarkedOnce() {
    pages.words(
        "brought:\n  - {words: [baulk], listed: [strip], unless: [its baulk]}\n  - {words: [=tub]}\n");
    pages.work("break", "", "1. Look at it.\n2. Lay it on a baulk, not on a tube.");
    pages.work("marked", "", "1. Lay it on a baulk.\n2. Take the baulk (not on the list) out.");
    pages.work("listed", "materials: [{use: strip, amount: 1 m}]\n", "1. Lay it on a baulk.");
    pages.work("its-own", "", "1. Lay it on its baulk.");
    pages.work("denied", "", "1. Lay it on no baulk.");
    assertThat(pages.found("not-marked", "break")).containsExactly("9 baulk");
    assertThat(pages.found("not-marked", "marked")).isEmpty();
    assertThat(pages.found("not-marked", "listed")).isEmpty();
    assertThat(pages.found("not-marked", "its-own")).isEmpty();
    assertThat(pages.found("not-marked", "denied")).isEmpty();
  }

  @Test
  void whatIsTakenOffIsPutBack() {
    pages.words("back:\n  - {off: [lead out], on: [lead in], unless: [meanwhile]}\n");
    pages.work("break", "", "1. Put the lead in and try it.\n2. Lead out. Wipe it.");
    pages.work("back", "", "1. Lead out. Wipe it.\n\n## Done\n\nIt is dry. Lead in.");
    pages.work("meanwhile", "", "1. Lead out meanwhile: wipe it.");
    pages.work("closing", "", "1. Wipe it.\n\n## Done\n\nIt is dry, the lead out.");
    pages.work("denied", "", "1. Wipe it, never with the lead out.");
    assertThat(pages.found("not-put-back", "break")).containsExactly("9 lead out");
    assertThat(pages.found("not-put-back", "back")).isEmpty();
    assertThat(pages.found("not-put-back", "meanwhile")).isEmpty();
    assertThat(pages.found("not-put-back", "closing")).isEmpty();
    assertThat(pages.found("not-put-back", "denied")).isEmpty();
  }

  @Test
  void whatIsCrawledIntoIsOpenedFirst() {
    pages.work("break", "", "1. Crawl in and look.");
    pages.work("close", "access: [berth-lifted]\n", "1. Crawl in and look.");
    pages.work("denied", "", "1. Nobody is to crawl into it; never crawl in.");
    assertThat(pages.found("no-tool", "break")).containsExactly("8 berth-lifted");
    assertThat(pages.found("no-tool", "close")).isEmpty();
    assertThat(pages.found("no-tool", "denied")).isEmpty();
  }

  @Test
  void aRenewalSaysWhatComesBeforeAndListsItsMainPart() {
    String renewal = "work: renew\n";
    pages.work("break", renewal, "1. Lay it.");
    pages.work("close", renewal, "## Before\n\n1. Measure.\n\n## The work\n\n2. Lay it.");
    assertThat(pages.found("no-before", "break")).containsExactly("5 before");
    assertThat(pages.found("no-before", "close")).isEmpty();
  }

  @Test
  void theMainPartIsOnTheList() {
    String head = "---\ntitle: Replace the gasket of the lid\nsystem: deck\nwork: renew\n";
    String rest = "skill: owner\nminutes: 9\n---\n1. Lay it.\n";
    pages.workspace().write("articles/procedures/break.md", head + rest);
    pages
        .workspace()
        .write(
            "articles/procedures/close.md",
            head + "materials: [{use: strip, amount: 1 m}]\n" + rest);
    assertThat(pages.found("main-part", "break")).containsExactly("2 gasket");
    assertThat(pages.found("main-part", "close")).isEmpty();
  }
}
