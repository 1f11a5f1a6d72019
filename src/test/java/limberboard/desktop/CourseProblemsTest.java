package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseProblemsTest {
  @TempDir Path folder;

  @Test
  void theWindowToldOfAWorkspaceIsToldOfItsCoursesToo() throws IOException {
    WorkspaceFolders folders = NewWorkspace.in(folder.resolve("yard"));
    for (String page : new String[] {"symptoms/clutch-slips.md", "models/tarnwick-30.md"}) {
      Files.copy(Path.of("articles", page), folders.articles().resolve(page));
    }
    Files.writeString(
        folders.articles().resolve("courses/day.md"),
        """
        ---
        title: A day
        for: beginners
        hours: 2
        drills:
          - {symptom: clutch-slips, boat: knot, seed: 7, minutes: 30, teach: {after: [Look.]}}
        ---
        """);
    Clock clock = Clock.fixed(Instant.parse("2026-03-15T12:00:00Z"), ZoneOffset.UTC);
    assertThat(WindowServices.Reader.of(folders, clock).read().problems())
        .filteredOn(problem -> problem.file().endsWith("day.md"))
        .extracting(Problem::wrong)
        .containsExactly("there is no boat \"knot\"");
  }
}
