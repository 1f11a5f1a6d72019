package limberboard.desktop.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import org.junit.jupiter.api.Test;

/** The courses that are pages of the library are opened, and their drills begun in order. */
class DrillCourseTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 20);

  private final Steps work = new Steps();
  private final Notices notices = new Notices();
  private final Background background =
      new Background(work, Runnable::run, new Activity(), notices);
  private final DrillModel model = new DrillModel(background, notices, Guard.NONE);

  private DrillCourse course() throws IOException {
    Workspace demo = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    Session session =
        new Session(
            Clock.fixed(DAY.atStartOfDay().toInstant(ZoneOffset.UTC), ZoneOffset.UTC),
            Optional.empty());
    session.replace(demo);
    return new DrillCourse(session, background, Guard.NONE);
  }

  @Test
  void eachReadyCourseIsOpenedWithAllItsDrills() throws IOException {
    DrillCourse course = course();
    List<Page<Course>> ready = course.ready();
    assertThat(ready).isNotEmpty();
    for (Page<Course> page : ready) {
      course.open(page);
      work.all();
      DrillCourse.Opened opened = course.opened().orElseThrow();
      assertThat(opened.title()).isEqualTo(page.title());
      assertThat(opened.problems()).isEmpty();
      assertThat(opened.lines()).hasSameSizeAs(page.details().drills());
    }
  }

  @Test
  void aDrillOfItHidesWhatThePageHides() throws IOException {
    DrillCourse course = course();
    Page<Course> page = course.ready().get(0);
    course.open(page);
    work.all();
    course.begin(course.next().orElseThrow(), Optional.of("Ada"), model);
    work.all();
    assertThat(model.run().orElseThrow().drill().order().symptom())
        .isEqualTo(page.details().drills().get(0).symptom());
    assertThat(model.run().orElseThrow().drill().order().hides())
        .isEqualTo(page.details().drills().get(0).hides());
  }
}
