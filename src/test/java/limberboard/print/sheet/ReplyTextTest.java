package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Skill;
import limberboard.print.cut.CheckCutter;
import limberboard.trace.Alternative;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Replies about the demo's symptoms on one of its boats. */
class ReplyTextTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static Trace begin(String symptom) {
    return Trace.begin(
        Fault.of(
            workspace.library().symptom(symptom).orElseThrow(),
            new Fitting(workspace.boat("dunlin").orElseThrow(), TODAY),
            workspace.library(),
            workspace.cases()));
  }

  private static ReplyText reply(Trace trace, NextStep step) {
    return new ReplyText(workspace.library(), trace, step);
  }

  @Test
  void everyStepThatCanBeNextComesWithAllItsCautionsBeforeItAndInFull() {
    Trace trace = begin("water-in-forward-cabin");
    for (Alternative other : trace.alternatives()) {
      String text = reply(trace, other.step()).plain();
      int step = text.indexOf("Next");
      for (WorkCaution caution : TraceSheet.cautions(trace, other.step())) {
        assertThat(text).contains(caution.page().details().act());
        assertThat(text.indexOf("Caution: " + caution.title())).isBetween(0, step);
        assertThat(text.indexOf(caution.emergency() ? caution.question().get() : caution.rule()))
            .isBetween(0, step);
      }
      assertThat(text).contains(other.step().text().substring(1));
    }
  }

  @Test
  void saysHowWithWhatAndWhatEachAnswerMeans() {
    Trace trace = begin("water-in-forward-cabin");
    NextStep.DoCheck step = (NextStep.DoCheck) trace.next();
    String text = reply(trace, step).plain();
    assertThat(text)
        .startsWith("Water in the forward cabin, on Dunlin (")
        .contains(
            "Next, please check: " + step.text(), "What the answer will mean", "Time: about ");
    assertThat(step.check().check().skill()).isNotEqualTo(Skill.LICENSED);
    assertThat(text).contains(step.check().check().how().strip());
    trace.outcomes(step).stream()
        .filter(outcome -> outcome.then().isPresent())
        .forEach(
            outcome ->
                assertThat(text)
                    .contains(
                        "- "
                            + outcome.finding().words()
                            + ": most likely then, "
                            + outcome.then().get().ranking().get(0).cause().title()));
  }

  @Test
  void howLicensedWorkIsDoneIsNotTold() {
    workspace.library().all(limberboard.library.page.Symptom.class).stream()
        .filter(
            page ->
                new Fitting(workspace.boat("dunlin").orElseThrow(), TODAY).fits(page.head().fits()))
        .map(page -> begin(page.id()))
        .forEach(
            trace ->
                trace.fault().checks().stream()
                    .filter(check -> check.check().skill() == Skill.LICENSED)
                    .forEach(
                        check ->
                            assertThat(
                                    reply(
                                            trace,
                                            new NextStep.DoCheck(
                                                check, 1, check.access(), "because"))
                                        .plain())
                                .contains(CheckCutter.HOW_NOT_PRINTED)
                                .doesNotContain(check.check().how())));
  }

  @Test
  void asHtmlItHasTheSameWordsAndNoMarkupOfOthers() {
    Trace trace = begin("water-in-forward-cabin");
    String html = reply(trace, trace.next()).html();
    assertThat(html)
        .startsWith("<p><b>Water in the forward cabin")
        .contains("<ul><li>")
        .doesNotContain("<img", "<a ", "<script");
  }
}
