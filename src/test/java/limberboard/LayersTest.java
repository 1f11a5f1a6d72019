package limberboard;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Holds the layers: arrows point down only. */
@AnalyzeClasses(packages = "limberboard", importOptions = DoNotIncludeTests.class)
class LayersTest {
  @ArchTest
  static final ArchRule ARROWS_POINT_DOWN =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("Start")
          .definedBy("limberboard")
          .layer("Desktop")
          .definedBy("limberboard.desktop..")
          .layer("Terminal")
          .definedBy("limberboard.cli..")
          .layer("Findings")
          .definedBy("limberboard.findings..")
          .layer("Notes")
          .definedBy("limberboard.notes..")
          .layer("Letters")
          .definedBy("limberboard.letters..")
          .layer("Drill")
          .definedBy("limberboard.drill..")
          .layer("Writing")
          .definedBy("limberboard.writing..")
          .layer("Proofread")
          .definedBy("limberboard.proofread..")
          .layer("Print")
          .definedBy("limberboard.print..")
          .layer("Trace")
          .definedBy("limberboard.trace..")
          .optionalLayer("Calendar")
          .definedBy("limberboard.calendar..")
          .layer("Effort")
          .definedBy("limberboard.effort..")
          .optionalLayer("Upkeep")
          .definedBy("limberboard.upkeep..")
          .optionalLayer("Rigging")
          .definedBy("limberboard.rigging..")
          .layer("Workings")
          .definedBy("limberboard.workings..")
          .layer("Sharing")
          .definedBy("limberboard.sharing..")
          .layer("History")
          .definedBy("limberboard.history..")
          .layer("Moving")
          .definedBy("limberboard.moving..")
          .layer("Search")
          .definedBy("limberboard.search..")
          .layer("Words")
          .definedBy("limberboard.words..")
          .layer("Cases")
          .definedBy("limberboard.cases..")
          .layer("Boat")
          .definedBy("limberboard.boat..")
          .layer("Library")
          .definedBy("limberboard.library..")
          .whereLayer("Start")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("Desktop")
          .mayOnlyBeAccessedByLayers("Start")
          .whereLayer("Terminal")
          .mayOnlyBeAccessedByLayers("Start")
          .whereLayer("Findings")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Notes")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Notes")
          .mayOnlyAccessLayers("Library")
          .whereLayer("Letters")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Drill")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Writing")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Findings")
          .whereLayer("Proofread")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Findings")
          .whereLayer("Proofread")
          .mayOnlyAccessLayers("Boat", "Library", "Words")
          .whereLayer("Print")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Letters", "Drill", "Writing")
          .whereLayer("Trace")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Findings", "Letters", "Print", "Drill")
          .whereLayer("Cases")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Letters", "Print", "Trace")
          .whereLayer("Effort")
          .mayOnlyBeAccessedByLayers("Trace", "Drill")
          .whereLayer("Effort")
          .mayNotAccessAnyLayer()
          .whereLayer("Calendar")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Upkeep")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Print", "Calendar")
          .whereLayer("Rigging")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Print", "Upkeep")
          .whereLayer("Workings")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Print", "Upkeep", "Rigging")
          .whereLayer("Search")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal", "Letters")
          .whereLayer("Sharing")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Sharing")
          .mayOnlyAccessLayers("History", "Library")
          .whereLayer("History")
          .mayOnlyAccessLayers("Library")
          .whereLayer("Moving")
          .mayOnlyBeAccessedByLayers("Desktop", "Terminal")
          .whereLayer("Moving")
          .mayOnlyAccessLayers("Library")
          .whereLayer("Words")
          .mayOnlyAccessLayers("Library")
          .whereLayer("Library")
          .mayNotAccessAnyLayer()
          .because("a change to what people touch must not reach what the trade knows");

  @ArchTest
  static final ArchRule NO_CIRCLES =
      slices()
          .matching("limberboard.(*)..")
          .should()
          .beFreeOfCycles()
          .because("a newcomer must be able to read the packages one after another");

  @ArchTest
  static final ArchRule NO_CIRCLES_WITHIN =
      slices()
          .matching("limberboard.(**)")
          .should()
          .beFreeOfCycles()
          .because("the rooms of a package are read one after another, too");

  @ArchTest
  static final ArchRule SWING_STAYS_IN_THE_WINDOW =
      noClasses()
          .that()
          .resideOutsideOfPackage("limberboard.desktop..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..")
          .because("everything but the window must work without a display");

  @ArchTest
  static final ArchRule LUCENE_STAYS_IN_SEARCH =
      noClasses()
          .that()
          .resideOutsideOfPackage("limberboard.search..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.lucene..")
          .because("another index must be able to take its place");

  @ArchTest
  static final ArchRule GIT_STAYS_IN_HISTORY_AND_SHARING =
      noClasses()
          .that()
          .resideOutsideOfPackages("limberboard.history..", "limberboard.sharing..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.eclipse.jgit..")
          .because("what people touch speaks of versions and copies, whatever keeps them");

  @ArchTest
  static final ArchRule MAIL_IS_READ_AND_WRITTEN_IN_ONE_PLACE =
      noClasses()
          .that()
          .haveNameNotMatching(
              "limberboard\\.letters\\.mail\\.((Mail|Head)Reader|MailWriter)(\\$.*)?")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.james..")
          .because("what strangers write is met by as little code as can be");

  @ArchTest
  static final ArchRule HTML_OF_LETTERS_IS_READ_IN_ONE_PLACE =
      noClasses()
          .that()
          .haveNameNotMatching("limberboard\\.letters\\.mail\\.HtmlText(\\$.*)?")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.jsoup..")
          .because("what strangers write is met by as little code as can be");

  @ArchTest
  static final ArchRule NUMBERS_ARE_WORDED_ALIKE_EVERYWHERE =
      noClasses()
          .should()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "toLowerCase")
          .orShould()
          .callMethod(String.class, "toUpperCase")
          .because("a locale must not change digits, keys and file names");

  @ArchTest
  static final ArchRule ONLY_THE_START_KNOWS_THE_STANDARD_STREAMS =
      noClasses()
          .that()
          .resideInAPackage("limberboard.*..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethod(Throwable.class, "printStackTrace")
          .because("what is printed goes through the session, and failures through the last net");

  @ArchTest
  static final ArchRule COMPUTING_IS_PURE =
      noClasses()
          .that()
          .resideInAnyPackage(
              "limberboard.effort..",
              "limberboard.cases..",
              "limberboard.drill",
              "limberboard.drill.mark..",
              "limberboard.drill.learn..",
              "limberboard.drill.play..",
              "limberboard.trace..",
              "limberboard.upkeep..",
              "limberboard.rigging..",
              "limberboard.workings..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio.file..", "java.awt..", "java.time.Clock")
          .because("the same question must have the same answer, whatever the machine and the day");

  @ArchTest
  static final ArchRule COMPUTING_HAS_NO_CLOCK =
      noClasses()
          .that()
          .resideInAnyPackage(
              "limberboard.cases..",
              "limberboard.drill",
              "limberboard.drill.mark..",
              "limberboard.drill.learn..",
              "limberboard.drill.play..",
              "limberboard.trace..",
              "limberboard.upkeep..",
              "limberboard.rigging..",
              "limberboard.calendar..",
              "limberboard.workings..",
              "limberboard.boat..")
          .should()
          .callMethod(java.time.LocalDate.class, "now")
          .orShould()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .because("the day is an argument, so that any day can be tried");
}
