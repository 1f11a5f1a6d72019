package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileMemoryTest {
  private static final Instant NOON = Instant.parse("2026-05-20T12:00:00Z");
  @TempDir Path folder;
  private Instant now = NOON.plusSeconds(60);
  private int reads;
  private final FileMemory<String> memory = new FileMemory<>(() -> now);

  private Path write(String name, String text) throws IOException {
    Path written = Files.writeString(folder.resolve(name), text);
    return Files.setLastModifiedTime(written, FileTime.from(NOON));
  }

  private String read(Path file) {
    return memory.of(file, this::text);
  }

  private String text(Path file) {
    reads++;
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void anOldFileIsReadOnce() throws IOException {
    Path file = write("page.md", "one");
    assertThat(read(file)).isEqualTo("one");
    assertThat(read(file)).isEqualTo("one");
    assertThat(reads).isEqualTo(1);
  }

  @Test
  void aFileReadWithinTwoSecondsOfItsChangeIsReadAgain() throws IOException {
    now = NOON.plusSeconds(1);
    Path file = write("page.md", "one");
    assertThat(read(file)).isEqualTo("one");
    write("page.md", "two");
    now = NOON.plusSeconds(60);
    assertThat(read(file)).as("of the same size, within one step of the clock").isEqualTo("two");
    read(file);
    assertThat(reads).isEqualTo(2);
  }

  @Test
  void whatNobodyAsksForIsForgotten() throws IOException {
    Path one = write("one.svg", "one");
    read(one);
    read(write("two.svg", "two"));
    memory.forgetUnasked();
    assertThat(memory.size()).isEqualTo(2);
    read(one);
    memory.forgetUnasked();
    assertThat(memory.size()).isEqualTo(1);
    read(one);
    assertThat(reads).isEqualTo(2);
  }
}
