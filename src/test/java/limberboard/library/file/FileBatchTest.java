package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileBatchTest {
  @TempDir Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void onlyWhatIsPlacedIsThereAndNothingElseIsLeft() throws IOException {
    Path old = Files.writeString(folder.resolve("a.md"), "old");
    Path other = Files.writeString(folder.resolve("b.md"), "old");
    Path made = folder.resolve("c.md");
    try (FileBatch batch = new FileBatch()) {
      batch.prepare(old, bytes("new"));
      batch.prepare(other, bytes("new"));
      batch.prepare(made, bytes("new"));
      batch.sync();
      assertThat(old).hasContent("old");
      assertThat(made).doesNotExist();
      batch.place(old);
      batch.place(made);
    }
    assertThat(old).hasContent("new");
    assertThat(other).hasContent("old");
    assertThat(made).hasContent("new");
    assertThat(names()).containsExactly("a.md", "b.md", "c.md");
  }

  @Test
  void whatCannotBePreparedLeavesAllAsItWas() throws IOException {
    Path file = Files.writeString(folder.resolve("a.md"), "old");
    Path taken = Files.createDirectory(folder.resolve("b.md"));
    try (FileBatch batch = new FileBatch()) {
      batch.prepare(file, bytes("new"));
      assertThatThrownBy(() -> batch.prepare(taken, bytes("new"))).isInstanceOf(IOException.class);
    }
    assertThat(file).hasContent("old");
    assertThat(names()).containsExactly("a.md", "b.md");
  }

  @Test
  void whatAKilledProgramPreparedIsTakenAwayAndNothingOfOthers() throws IOException {
    Path file = Files.writeString(folder.resolve("a.md"), "old");
    Files.writeString(folder.resolve(".a.md-17.tmp"), "half");
    Files.writeString(folder.resolve(".b.md-17.tmp"), "somebody else's");
    Files.writeString(folder.resolve(".a.md-x.tmp"), "somebody else's");
    FileBatch.clear(List.of(file, folder.resolve("gone/c.md")));
    assertThat(names()).containsExactly(".a.md-x.tmp", ".b.md-17.tmp", "a.md");
  }
}
