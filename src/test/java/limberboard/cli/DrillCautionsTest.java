package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.DrillDemo;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.file.CoursePages;
import limberboard.drill.paper.CourseSheets;
import limberboard.drill.paper.PaperPack;
import limberboard.drill.paper.StudentSheet;
import limberboard.library.Library;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.print.page.CutPage;
import limberboard.print.text.PlainText;
import limberboard.trace.Fault;
import org.junit.jupiter.api.Test;

/** Every output of a drill names every caution of the work it holds, before the work. */
class DrillCautionsTest {
  private static final Workspace WORKSPACE = DrillDemo.workspace();

  private static String flat(String text) {
    return text.replaceAll("[\\s\\u00a0]+", " ");
  }

  @Test
  void everyCautionStandsBeforeTheWorkOnScreenInJsonAndOnPaper() {
    int drills = 0;
    for (Page<Symptom> page : WORKSPACE.library().all(Symptom.class)) {
      for (Boat boat : WORKSPACE.boats()) {
        Fitting fitting = new Fitting(boat, DrillDemo.ON);
        if (fitting.fits(page.head().fits())) {
          holds(WORKSPACE.library(), DrillDemo.fault(page.id(), boat.id()));
          drills++;
        }
      }
    }
    assertThat(drills).isGreaterThan(50);
  }

  @Test
  void everyCautionOfACourseStandsOnTheTrainersSheetsBeforeItsDrills() {
    CoursePages pages = new CoursePages(WORKSPACE, DrillDemo.ON);
    assertThat(pages.pages()).isNotEmpty();
    for (Page<Course> page : pages.pages()) {
      List<CourseLesson> lessons = pages.lessons(page);
      CutPage sheet = new CourseSheets(page, lessons).trainer();
      String paper = flat(new PlainText().render(sheet, 1000));
      String before = paper.split("For the trainer alone", 2)[0];
      for (CourseLesson lesson : lessons) {
        for (WorkCaution caution : lesson.drill().orElseThrow().cautions()) {
          assertThat(before).contains(flat(caution.title()));
          if (!caution.emergency()) {
            assertThat(before).contains(flat(caution.rule()));
          }
          for (String act : caution.page().details().act()) {
            assertThat(paper).contains(flat(act));
          }
        }
      }
    }
  }

  private static void holds(Library library, Fault fault) {
    WantedCautions wanted = new WantedCautions(library, fault.fitting());
    Drill drill = DrillDemo.drill(fault, 1, 0);
    DrillView view = DrillView.of(drill);
    Set<String> all = new TreeSet<>(wanted.named(fault.page().details().first()));
    assertThat(view.first()).containsAll(all);
    for (int i = 0; i < fault.checks().size(); i++) {
      Set<String> here = wanted.of(fault.checks().get(i).check());
      assertThat(view.checks().get(i).cautions()).containsAll(here);
      all.addAll(here);
    }
    for (DrillView.MendView mend : view.mends()) {
      Optional<Page<Procedure>> procedure = library.procedure(mend.mend());
      Set<String> here = procedure.map(wanted::of).orElse(Set.of());
      assertThat(mend.cautions()).as(mend.id()).containsAll(here);
      all.addAll(here);
    }
    assertThat(view.cautions()).extracting(TraceView.CautionView::id).containsAll(all);
    StringWriter printed = new StringWriter();
    new DrillText(new PrintWriter(printed, true)).beginning(drill);
    String before = flat(printed.toString().split("\nChecks:", 2)[0]);
    CutPage sheet = new StudentSheet(PaperPack.of(fault, 1, 1)).of(1);
    String paper = flat(new PlainText().render(sheet, 1000)).split("What you can do", 2)[0];
    for (String id : all) {
      String title = flat(library.caution(id).orElseThrow().title());
      assertThat(before).as("text").contains(title);
      assertThat(paper).as("paper").contains(title);
    }
  }
}
