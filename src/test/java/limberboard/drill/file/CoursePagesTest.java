package limberboard.drill.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.drill.HiddenNumber;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoursePagesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 15);
  private static final String BOAT = "a tarnwick-30 of 2019";

  @TempDir Path folder;

  @BeforeEach
  void copyPages() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("articles"))) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Path to = folder.resolve(file.toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else if (!file.startsWith("articles/courses") && !file.startsWith("articles/pictures")) {
          Files.copy(file, to);
        }
      }
    }
  }

  private static String drill(String symptom, String boat, int hides) {
    return "  - symptom: "
        + symptom
        + "\n    boat: "
        + boat
        + "\n    seed: 7\n    hides: "
        + hides
        + "\n    minutes: 30\n    teach: {before: [Look first.]}\n";
  }

  private Workspace with(String... drills) throws IOException {
    Files.createDirectories(folder.resolve("articles/courses"));
    Files.writeString(
        folder.resolve("articles/courses/day.md"),
        "---\ntitle: A day\nfor: beginners\nhours: 4\ndrills:\n"
            + String.join("", drills)
            + "---\nText.\n");
    return new WorkspaceReader(new WorkspaceFolders(folder)).read();
  }

  private List<Problem> problems(Workspace workspace) {
    return new CoursePages(workspace, DAY).problems(new WorkspaceFolders(folder)).stream().toList();
  }

  @Test
  void aCourseIsReadAndItsDrillsHideWhatTheyAreToHide() throws IOException {
    Workspace workspace =
        with(
            drill("clutch-slips", BOAT, HiddenNumber.of("clutch-slips", "cam-worn", 7)),
            drill("toilet-smells", BOAT, HiddenNumber.of("toilet-smells", "joint-weeps", 7)));
    assertThat(workspace.problems().stream().filter(p -> p.file().contains("courses"))).isEmpty();
    CoursePages pages = new CoursePages(workspace, DAY);
    Page<Course> page = pages.page("day").orElseThrow();
    assertThat(page.details().otherMinutes()).isEqualTo(180);
    assertThat(pages.lessons(page))
        .extracting(lesson -> lesson.drill().orElseThrow().hiddenCause().id())
        .containsExactly("cam-worn", "joint-weeps");
    assertThat(problems(workspace)).isEmpty();
    CourseFiles.Course course = pages.course(page);
    assertThat(course.title()).isEqualTo("A day");
    CourseFiles files = new CourseFiles();
    assertThat(files.read("day.yaml", files.text(course)).course()).contains(course);
    assertThat(files.text(course)).doesNotContain("cam-worn", "joint-weeps", "Look first");
  }

  @Test
  void aBoatThatIsNotThereIsToldWithItsLine() throws IOException {
    List<Problem> told = problems(with(drill("clutch-slips", "dunln", 100_000)));
    assertThat(told).hasSize(1);
    assertThat(told.get(0).file()).isEqualTo("articles/courses/day.md");
    assertThat(told.get(0).line()).isEqualTo(7);
    assertThat(told.get(0).key()).isEqualTo("drills[1].boat");
    assertThat(told.get(0).wrong()).contains("no boat \"dunln\"");
    assertThat(told.get(0).right()).contains("a tarnwick-30 of 2017");
  }

  @Test
  void aHiddenCauseThatTheBoatCannotHaveIsToldAndNotNamed() throws IOException {
    String symptom = "water-in-forward-cabin";
    int bowsprit = HiddenNumber.of(symptom, "bowsprit-seal", 7);
    Workspace workspace =
        with(drill("clutch-slips", BOAT, 123_456), drill(symptom, BOAT, bowsprit));
    List<Problem> told = problems(workspace);
    assertThat(told).extracting(Problem::line).containsExactly(9, 15);
    assertThat(told.get(0).wrong()).contains("123456 hides no cause of clutch-slips");
    assertThat(told.get(1).wrong())
        .contains("that Tarnwick 30 of 2019 cannot have")
        .doesNotContain("bowsprit-seal");
    assertThat(told.get(1).right()).contains("course line water-in-forward-cabin");
    CoursePages pages = new CoursePages(workspace, DAY);
    List<CourseLesson> lessons = pages.lessons(pages.page("day").orElseThrow());
    assertThat(lessons).hasSize(2).allMatch(lesson -> lesson.drill().isEmpty());
  }

  @Test
  void aSymptomThatIsNotForTheBoatIsTold() throws IOException {
    List<Problem> told = problems(with(drill("centreboard-stuck", BOAT, 123_456)));
    assertThat(told).hasSize(1);
    assertThat(told.get(0).wrong()).contains("centreboard-stuck is not for Tarnwick 30 of 2019: ");
  }

  @Test
  void anUnknownSymptomIsToldOnceByTheLibrary() throws IOException {
    Workspace workspace = with(drill("clutch-slip", BOAT, 123_456));
    assertThat(problems(workspace)).isEmpty();
    List<Problem> told =
        workspace.problems().stream().filter(p -> p.file().contains("courses")).toList();
    assertThat(told).hasSize(1);
    assertThat(told.get(0).line()).isEqualTo(6);
    assertThat(told.get(0).right()).contains("clutch-slips");
  }
}
