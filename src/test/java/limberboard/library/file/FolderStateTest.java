package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderStateTest {
  private static final Instant NOON = Instant.parse("2026-05-20T12:00:00Z");
  @TempDir Path folder;
  private Path file;
  private Instant now = NOON;
  private FolderState state;

  @BeforeEach
  void file() throws IOException {
    file = write("page.md", "one", NOON);
    InstantSource clock = () -> now;
    state = new FolderState(() -> List.of(folder), clock);
    state.look();
  }

  private Path write(String name, String text, Instant time) throws IOException {
    Path written = Files.writeString(folder.resolve(name), text);
    return Files.setLastModifiedTime(written, FileTime.from(time));
  }

  @Test
  void nothingHasChangedWhileNothingChanges() {
    assertThat(state.look()).isFalse();
    now = NOON.plusSeconds(60);
    assertThat(state.look()).isFalse();
    assertThat(state.look()).isFalse();
  }

  @Test
  void aChangeIsToldOnce() throws IOException {
    write("page.md", "longer", NOON.plusSeconds(1));
    assertThat(state.look()).isTrue();
    assertThat(state.look()).isFalse();
  }

  @Test
  void aChangeThatLeavesSizeAndTimeAsTheyAreIsSeenWhileTheTimeIsYoung() throws IOException {
    write("page.md", "two", NOON);
    assertThat(state.look()).isTrue();
    write("page.md", "six", NOON);
    now = NOON.plusSeconds(60);
    assertThat(state.look()).as("also when it is looked at late").isTrue();
  }

  @Test
  void filesThatComeAndGoAreSeenAndHiddenOnesAreNot() throws IOException {
    write(".page.md.tmp", "half", NOON);
    Files.createDirectories(folder.resolve(".git"));
    write(".git/index", "x", NOON);
    assertThat(state.look()).isFalse();
    write("other.md", "other", NOON);
    assertThat(state.look()).isTrue();
    Files.delete(file);
    assertThat(state.look()).isTrue();
  }
}
