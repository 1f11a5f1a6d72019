package limberboard.trace.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import org.junit.jupiter.api.Test;

/** A cause played is the trace that its answers make. */
class TriedCauseTest {
  private static Fault fault(String symptom) throws IOException {
    Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
    return Fault.of(
        workspace.library().symptom(symptom).orElseThrow(),
        dunlin,
        workspace.library(),
        workspace.cases());
  }

  @Test
  void goesTheWayOfTheTraceStepByStep() throws IOException {
    Fault fault = fault("clutch-slips");
    for (TriedCause tried : TriedCause.all(fault)) {
      Trace trace = Trace.begin(fault);
      double minutes = 0;
      for (TriedCause.Step step : tried.steps()) {
        assertThat(step.step().which()).isEqualTo(trace.next().which());
        minutes += step.minutes();
        if (trace.next() instanceof NextStep.DoCheck check) {
          String answer = step.finding().replace(' ', '-');
          assertThat(check.check().answers()).contains(answer);
          trace = trace.answer(check.id(), answer);
          assertThat(step.chance())
              .isEqualTo(trace.situation().chances()[fault.causeNumber(tried.cause().id())]);
        } else if (trace.next() instanceof NextStep.DoMend mend
            && !step.finding().equals("mended")) {
          trace = trace.mendTried(mend.cause().id());
        }
      }
      assertThat(tried.minutes()).isEqualTo(minutes);
    }
  }

  @Test
  void everyAnswerIsTheLikeliestForTheCause() throws IOException {
    Fault fault = fault("masthead-light-dead");
    for (TriedCause tried : TriedCause.all(fault)) {
      int cause = fault.causeNumber(tried.cause().id());
      for (TriedCause.Step step : tried.steps()) {
        if (step.step() instanceof NextStep.DoCheck check) {
          int asked = fault.checkNumber(check.id());
          int said = check.check().answers().indexOf(step.finding().replace(' ', '-'));
          double mine = fault.model().answers().likelihood(asked, said, cause);
          for (int other = 0; other < check.check().answers().size(); other++) {
            assertThat(fault.model().answers().likelihood(asked, other, cause))
                .isLessThanOrEqualTo(mine);
          }
        }
      }
    }
  }

  @Test
  void whereItEndsFollowsFromWhatIsDoneLast() throws IOException {
    Fault fault = fault("water-in-forward-cabin");
    List<TriedCause> all = TriedCause.all(fault);
    assertThat(all).hasSize(fault.causes().size() - 1);
    for (TriedCause tried : all) {
      NextStep last = tried.steps().get(tried.steps().size() - 1).step();
      boolean named =
          tried.named().filter(each -> each.mend().equals(tried.cause().mend())).isPresent();
      assertThat(tried.isFound()).isEqualTo(named);
      assertThat(last instanceof NextStep.DoMend).isEqualTo(tried.end() == TriedCause.End.MENDED);
    }
    assertThat(all.stream().filter(TriedCause::isFound).count()).isGreaterThan(all.size() / 2);
  }
}
