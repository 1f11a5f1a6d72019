package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {
  private static final byte[] TEXT = "sheet".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @Test
  void anOrdinaryFileIsWrittenAndReplaced() throws IOException {
    Path file = folder.resolve("list.csv");
    assertThat(OutputFile.write(file, TEXT)).isTrue();
    assertThat(OutputFile.write(file, new byte[] {'x'})).isTrue();
    assertThat(Files.readString(file)).isEqualTo("x");
  }

  @Test
  void foldersAreNotMadeUnasked() {
    assertThatThrownBy(() -> OutputFile.write(folder.resolve("a/list.csv"), TEXT))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("there is no folder " + folder.resolve("a"))
        .hasMessageContaining("make it first");
    assertThat(folder.resolve("a")).doesNotExist();
  }

  @Test
  void aFolderAndADashAreRefused() {
    assertThatThrownBy(() -> OutputFile.write(folder, TEXT)).hasMessageContaining("is a folder");
    assertThatThrownBy(() -> OutputFile.write(folder.resolve("-"), TEXT))
        .hasMessageContaining("/dev/stdout");
    assertThat(folder.resolve("-")).doesNotExist();
  }

  @Test
  void aLinkStaysALink() throws IOException {
    Path file = Files.writeString(folder.resolve("real.csv"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), file);
    OutputFile.write(link, TEXT);
    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(file)).isEqualTo("sheet");
  }

  @Test
  void aDeviceStaysADeviceAndAFullOneIsSaid() throws IOException {
    Path full = Path.of("/dev/full");
    Path nothing = Path.of("/dev/null");
    Assumptions.assumeTrue(Files.exists(full) && Files.exists(nothing), "no such devices here");
    assertThat(OutputFile.write(nothing, TEXT)).isFalse();
    assertThat(Files.isRegularFile(nothing)).isFalse();
    assertThatThrownBy(() -> OutputFile.write(full, TEXT))
        .hasMessageContaining("no space left on device");
    assertThat(Files.isRegularFile(full)).isFalse();
  }
}
