package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.boat.Workspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CaseFiguresTest {
  @TempDir Path folder;

  private Workspace with(String... days) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Files.createDirectories(folders.cases());
    for (String day : days) {
      Files.writeString(
          folders.cases().resolve(day + "-wet-locker.yaml"),
          "symptom: wet-locker\ncause: gasket\ndate: "
              + day
              + "\nmodel: dinghy\nminutes: 40\noutcome: mended\n");
    }
    return SmallWorkspace.read(folders);
  }

  @Test
  void countsByModelAndCauseAndSeason() throws IOException {
    CaseFigures figures = CaseFigures.of(with("2024-05-01", "2025-05-01", "2025-06-01"));
    assertThat(figures.heading()).startsWith("3 recorded cases, 2024 to 2025. One bar a season.");
    CaseFigures.Part causes = figures.parts().get(3);
    assertThat(causes.title()).isEqualTo("The most frequent causes");
    CaseFigures.Line line = causes.lines().get(0);
    assertThat(line.title()).isEqualTo("Water in the locker: the gasket no longer seals");
    assertThat(line.words())
        .startsWith("3 cases, median ")
        .contains("40", "2 h in all", "cost not recorded");
    assertThat(line.counts()).containsExactly(1, 2);
    assertThat(line.spoken(figures.seasons())).endsWith("By season: 2024: 1, 2025: 2.");
  }

  @Test
  void withoutCasesItSaysSo() throws IOException {
    CaseFigures figures = CaseFigures.of(with());
    assertThat(figures.heading()).isEqualTo("There are no recorded cases yet.");
    assertThat(figures.parts()).isEmpty();
  }
}
