package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.MissedSearch.How;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Searches that were of no use are kept in a small file, or not. */
class MissedSearchesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 20);
  @TempDir private Path folder;
  private MissedSearches searches;

  @BeforeEach
  void workspace() throws IOException {
    searches = new MissedSearches(new WorkspaceFolders(folder));
    Files.createDirectories(searches.file().getParent());
  }

  private static MissedSearch search(LocalDate day, String words) {
    return MissedSearch.of(day, How.NOTHING, words).orElseThrow();
  }

  @Test
  void eachIsKeptOnceADay() {
    assertThat(searches.all()).isEmpty();
    assertThat(searches.add(search(DAY, " warm   fridge "))).isEmpty();
    searches.add(search(DAY, "Warm fridge"));
    searches.add(search(DAY.plusDays(1), "warm fridge"));
    assertThat(searches.all())
        .containsExactly(
            new MissedSearch(DAY, How.NOTHING, "warm fridge"),
            new MissedSearch(DAY.plusDays(1), How.NOTHING, "warm fridge"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ab",
        "141",
        "ada@example.org",
        "call 0049 171 234567",
        "wet\nberth",
        "a letter that somebody has pasted into the field, which goes on and on and on and on and"
            + " on"
      })
  void whatIsPersonalOrNoSearchIsNeverKept(String typed) {
    assertThat(MissedSearch.of(DAY, How.NOT_OPENED, typed)).isEmpty();
  }

  @Test
  void theOldestGoAndTheFileStaysSmall() throws IOException {
    for (int i = 0; i < MissedSearches.MOST + 5; i++) {
      searches.add(search(DAY.plusDays(i), "fridge"));
    }
    assertThat(searches.all()).hasSize(MissedSearches.MOST);
    assertThat(searches.all().get(0).day()).isEqualTo(DAY.plusDays(5));
    assertThat(Files.size(searches.file())).isLessThan(50_000);
  }

  @Test
  void theyAreSwitchedOffAndForgotten() throws IOException {
    searches.add(search(DAY, "fridge"));
    assertThat(searches.keep(false)).isEmpty();
    assertThat(searches.areKept()).isFalse();
    searches.add(search(DAY, "oven"));
    assertThat(searches.all()).hasSize(1);
    searches.forget();
    assertThat(searches.all()).isEmpty();
    assertThat(searches.areKept()).as("forgetting switches nothing on").isFalse();
    searches.keep(true);
    searches.add(search(DAY, "oven"));
    assertThat(searches.all()).hasSize(1);
  }

  @Test
  void whatIsNotUnderstoodStaysAndADamagedFileIsNotWritten() throws IOException {
    Files.writeString(searches.file(), "a remark of mine\n2026-13-40 nothing fridge\n");
    searches.add(search(DAY, "oven"));
    assertThat(searches.all()).hasSize(1);
    assertThat(Files.readString(searches.file())).contains("a remark of mine", "2026-13-40");
    byte[] damaged = {(byte) 0xff, 0, 1};
    Files.write(searches.file(), damaged);
    assertThat(searches.add(search(DAY, "oven"))).isPresent();
    assertThat(searches.all()).isEmpty();
    assertThat(Files.readAllBytes(searches.file())).isEqualTo(damaged);
  }

  @Test
  void withoutAnIndexFolderNothingIsWritten() {
    MissedSearches none = new MissedSearches(new WorkspaceFolders(folder.resolve("none")));
    assertThat(none.add(search(DAY, "oven"))).isEqualTo(Optional.empty());
    assertThat(folder.resolve("none")).doesNotExist();
  }
}
