package limberboard.letters.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.letters.answer.Visit.Asked;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.Trace;
import org.junit.jupiter.api.Test;

/** The checks of one visit, on all boats and symptoms of the demo. */
class VisitTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 29);

  @Test
  void aVisitBeginsWithTheNextCheckAndOpensEachThingOnce() throws IOException {
    Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    int several = 0;
    int safety = 0;
    for (Boat boat : workspace.boats()) {
      Fitting fitting = new Fitting(boat, ON);
      for (Page<Symptom> symptom : workspace.library().all(Symptom.class)) {
        if (fitting.fits(symptom.head().fits())) {
          Trace trace =
              Trace.begin(Fault.of(symptom, fitting, workspace.library(), workspace.cases()));
          if (trace.next() instanceof DoCheck next) {
            List<Asked> visit = Visit.of(trace, next);
            holds(visit, next);
            several += visit.size() > 1 ? 1 : 0;
            if (next.check().check().comesFirst()) {
              assertThat(visit).hasSize(1);
              safety++;
            }
          }
        }
      }
    }
    assertThat(several).isGreaterThan(20);
    assertThat(safety).isPositive();
  }

  private static void holds(List<Asked> visit, DoCheck next) {
    assertThat(visit).hasSizeBetween(1, Visit.MOST);
    assertThat(visit.get(0).step().id()).isEqualTo(next.id());
    assertThat(visit.stream().map(each -> each.step().id())).doesNotHaveDuplicates();
    Set<String> opened = new HashSet<>();
    for (Asked asked : visit) {
      for (Access access : asked.toOpen()) {
        assertThat(opened.add(access.id())).as(access.id()).isTrue();
      }
      double more = asked.toOpen().stream().mapToDouble(Access::minutes).sum();
      if (asked != visit.get(0)) {
        assertThat(more).isLessThanOrEqualTo(Visit.LONGEST_ACCESS);
        assertThat(asked.step().check().check().skill().ownerMay()).isTrue();
      }
      assertThat(asked.minutes()).isEqualTo(asked.step().check().minutes() + more);
    }
    for (Asked asked : visit.subList(1, visit.size())) {
      asked.step().check().access().forEach(access -> assertThat(opened).contains(access.id()));
    }
  }
}
