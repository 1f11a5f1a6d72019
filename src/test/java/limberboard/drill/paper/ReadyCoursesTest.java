package limberboard.drill.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.ContentTest;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillDemo;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillRun;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.file.CoursePages;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.value.BoatSystem;
import limberboard.print.page.CutPage;
import limberboard.print.text.PlainText;
import org.junit.jupiter.api.Test;

/**
 * The ready courses of the library: every drill can be played, the hours go with the drills, and
 * they cover what they are to cover. Minutes of class are an estimate: for letter, going through
 * and teaching so many, and so many for each step of the best plan.
 */
@ContentTest
class ReadyCoursesTest {
  private static final String DAY = "a-day-for-new-technicians";
  private static final String DESK = "two-hours-for-support-staff";

  /** Minutes of class of a drill beside its steps, and for each step, as the pages say. */
  private static final Map<String, int[]> RECKONED =
      Map.of(DAY, new int[] {16, 4}, DESK, new int[] {10, 2});

  /** A row of a timetable: a time of day or minutes, and what comes then. */
  private static final Pattern ROW = Pattern.compile("\\| (?:(\\d+):)?(\\d+) \\| ([^|]+) \\|");

  private static final CoursePages PAGES = new CoursePages(DrillDemo.workspace(), DrillDemo.ON);

  private static List<CourseLesson> lessons(String id) {
    return PAGES.lessons(PAGES.page(id).orElseThrow());
  }

  private static List<Drill> drills(String id) {
    return lessons(id).stream().map(lesson -> lesson.drill().orElseThrow()).toList();
  }

  private static long steps(DrillRun plan) {
    return plan.done().stream().filter(step -> step.reply().kind() != Kind.HEEDED).count();
  }

  @Test
  void everyDrillIsPlayedToItsEndAndTakesTheTimeInClassThatItsStepsAsk() {
    RECKONED.forEach(
        (id, reckoned) -> {
          for (CourseLesson lesson : lessons(id)) {
            assertThat(lesson.wrong()).as(id + " " + lesson.number()).isEmpty();
            Drill drill = lesson.drill().orElseThrow();
            DrillRun plan = new Counsel(drill.fault()).played(drill);
            assertThat(plan.ended()).isTrue();
            assertThat((double) lesson.asked().minutes())
                .as(id + " " + lesson.number())
                .isCloseTo(reckoned[0] + reckoned[1] * (double) steps(plan), within(4.0));
          }
        });
  }

  @Test
  void theBestPlanFindsWhatIsHiddenSoThatTheTrainerCanShowIt() {
    for (String id : RECKONED.keySet()) {
      for (Drill drill : drills(id)) {
        DrillRun plan = new Counsel(drill.fault()).played(drill);
        String last = plan.last().orElseThrow().step().text();
        assertThat(last)
            .as(id + ", " + drill.order().symptom())
            .contains(" " + drill.hiddenCause().id() + " ");
      }
    }
  }

  @Test
  void theHoursHoldTheDrillsWithTimeForBreaks() {
    for (String id : RECKONED.keySet()) {
      Course course = PAGES.page(id).orElseThrow().details();
      double share = course.otherMinutes() / (course.hours() * 60);
      assertThat(share).as(id).isBetween(0.1, 0.35);
    }
  }

  @Test
  void theTimetableGivesEachDrillItsMinutesAndEndsWithTheHours() {
    for (String id : RECKONED.keySet()) {
      Page<Course> page = PAGES.page(id).orElseThrow();
      List<Integer> times = new ArrayList<>();
      List<Integer> drills = new ArrayList<>();
      Matcher row = ROW.matcher(page.body());
      while (row.find()) {
        if (row.group(3).matches("(Drill|Letter) \\d")) {
          drills.add(times.size());
        }
        int hours = row.group(1) == null ? 0 : Integer.parseInt(row.group(1));
        times.add(60 * hours + Integer.parseInt(row.group(2)));
      }
      for (int i = 0; i < drills.size(); i++) {
        assertThat(times.get(drills.get(i) + 1) - times.get(drills.get(i)))
            .as(id + " " + (i + 1))
            .isEqualTo(page.details().drills().get(i).minutes());
      }
      assertThat(drills).hasSameSizeAs(page.details().drills());
      assertThat((double) times.get(times.size() - 1) - times.get(0))
          .isEqualTo(60 * page.details().hours());
    }
  }

  @Test
  void theDayCoversWhatANewTechnicianMeets() {
    assertThat(drills(DAY)).hasSizeBetween(7, 9);
    assertThat(drills(DAY))
        .extracting(drill -> drill.order().symptom() + ": " + drill.hiddenCause().id())
        .containsExactly(
            "toilet-smells: outlet-valve",
            "water-in-forward-cabin: deck-fitting",
            "water-in-main-bilge: hull-hose",
            "diesel-overheats: impeller",
            "keel-will-not-stay-up: ram-seals",
            "play-in-steering: worn-cable",
            "furler-jams: halyard-wrap",
            "battery-goes-flat: alternator");
    List<BoatSystem> systems =
        drills(DAY).stream().flatMap(d -> d.fault().page().head().system().stream()).toList();
    assertThat(systems)
        .contains(BoatSystem.ELECTRICS, BoatSystem.ENGINE, BoatSystem.KEEL, BoatSystem.STEERING);
    assertThat(drills(DAY)).anyMatch(drill -> !drill.hiddenCause().mendedByOwner());
    assertThat(drills(DAY).stream().flatMap(d -> d.cautions().stream()).map(c -> c.id()))
        .contains(
            "flooding", "hot-engine", "under-raised-keel", "hydraulic-pressure", "rig-under-load");
  }

  @Test
  void theDeskLearnsWhatIsUrgentAndWhatIsHandedOver() {
    assertThat(drills(DESK))
        .extracting(drill -> drill.order().symptom() + ": " + drill.hiddenCause().id())
        .containsExactly(
            "toilet-smells: slide-seal",
            "water-in-main-bilge: saildrive-diaphragm",
            "keel-will-not-stay-up: lowering-valve-open",
            "rust-under-deck-fitting: chainplate",
            "battery-goes-flat: shore-charger");
    assertThat(drills(DESK))
        .filteredOn(drill -> !drill.hiddenCause().mendedByOwner())
        .extracting(drill -> drill.hiddenCause().mendSkill().word())
        .contains("licensed", "yard");
  }

  @Test
  void whatIsTaughtStandsOnTheTrainersSheetsAndNowhereElse() {
    for (Page<Course> page : PAGES.pages()) {
      List<CourseLesson> lessons = PAGES.lessons(page);
      CourseSheets sheets = new CourseSheets(page, lessons);
      String trainer = text(sheets.trainer());
      StringBuilder students = new StringBuilder();
      sheets.students().forEach(sheet -> students.append(text(sheet)));
      for (CourseLesson lesson : lessons) {
        Course.Teach teach = lesson.asked().teach();
        assertThat(teach.before()).isNotEmpty();
        assertThat(teach.after()).hasSizeGreaterThan(2);
        for (String said : teach.after()) {
          String first = said.substring(0, 25);
          assertThat(trainer).contains(first);
          assertThat(students.toString()).doesNotContain(first);
        }
        assertThat(trainer)
            .contains(
                "Hidden: " + lesson.drill().orElseThrow().hiddenCause().title().substring(0, 20));
      }
      assertThat(students.toString()).doesNotContain("Hidden:");
    }
  }

  private static String text(CutPage page) {
    return new PlainText().render(page, 200);
  }

  @Test
  void noPageNamesWhatItsDrillsHide() {
    for (Page<Course> page : PAGES.pages()) {
      for (CourseLesson lesson : PAGES.lessons(page)) {
        Drill drill = lesson.drill().orElseThrow();
        assertThat(page.body()).doesNotContain(drill.hiddenCause().title());
        assertThat(lesson.asked().teach().toString())
            .as("not even what is taught says which one it is")
            .doesNotContain(drill.hiddenCause().title());
      }
    }
  }
}
