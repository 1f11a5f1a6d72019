package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may stand in the place of a text file, and what is said of it. */
class TextFileTest {
  private static final int LARGEST = 20;

  @TempDir Path folder;
  private WorkspaceFolders folders;

  @BeforeEach
  void makeWorkspace() throws IOException {
    folders = new WorkspaceFolders(Files.createDirectory(folder.resolve("workspace")));
  }

  @Test
  void textOfTheLargestSizeIsRead() throws IOException {
    assertThat(read(write("x".repeat(LARGEST))).text()).hasSize(LARGEST);
  }

  @Test
  void oneByteMoreIsRefusedWithTheLimit() throws IOException {
    assertThat(wrong(write("x".repeat(LARGEST + 1))))
        .isEqualTo("log.csv: is 21 bytes long; keep it under 20 bytes");
  }

  @Test
  void lineEndsAreOneAndAByteOrderMarkIsNoText() throws IOException {
    assertThat(read(write("\uFEFFa\r\nb\n")).text()).isEqualTo("a\nb\n");
  }

  @Test
  void anotherEncodingIsRefusedInPlainWords() throws IOException {
    Path file = write("");
    Files.write(file, "größe".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(wrong(file)).isEqualTo("log.csv: is not UTF-8 text; save it as UTF-8");
  }

  @Test
  void whatIsNotTextIsRefused() throws IOException {
    assertThat(wrong(write("a\0b"))).startsWith("log.csv: is not text");
  }

  @Test
  void aPipeIsRefusedAndNotWaitedFor() throws Exception {
    Path pipe = folders.root().resolve("log.csv");
    assumeTrue(madePipe(pipe), "this system makes no pipes");
    assertThat(wrong(pipe)).contains("is not an ordinary file (a pipe or a device)");
  }

  @Test
  void aFolderIsRefused() throws IOException {
    Path file = Files.createDirectory(folders.root().resolve("log.csv"));
    assertThat(wrong(file)).contains("is a folder where a file belongs");
  }

  @Test
  void anEndlessFileIsRefused() throws IOException {
    Path endless = Path.of("/dev/zero");
    assumeTrue(Files.exists(endless), "this system has no endless file");
    assertThat(TextFile.read(endless, "log.csv").problems().toString())
        .contains("is not an ordinary file");
  }

  @Test
  void aLinkOutOfTheWorkspaceIsRefused() throws IOException {
    Path outside = Files.writeString(folder.resolve("outside.csv"), "secret");
    Path link = Files.createSymbolicLink(folders.root().resolve("log.csv"), outside);
    assertThat(wrong(link)).contains("is a link that leads out of the workspace");
  }

  @Test
  void aLinkThroughAFolderThatLeadsOutIsRefused() throws IOException {
    Path outside = Files.createDirectory(folder.resolve("outside"));
    Files.writeString(outside.resolve("log.csv"), "secret");
    Path link = Files.createSymbolicLink(folders.root().resolve("boat"), outside);
    assertThat(wrong(link.resolve("log.csv"))).contains("leads out of the workspace");
  }

  @Test
  void aLinkWithinTheWorkspaceIsRead() throws IOException {
    Path inside = Files.writeString(folders.root().resolve("shared.csv"), "shared");
    Path link = Files.createSymbolicLink(folders.root().resolve("log.csv"), inside);
    assertThat(read(link).text()).isEqualTo("shared");
  }

  @Test
  void aLinkToNothingIsThereAndIsRefused() throws IOException {
    Path link = folders.root().resolve("log.csv");
    assertThat(FileBytes.isThere(link)).isFalse();
    Files.createSymbolicLink(link, folders.root().resolve("nowhere.csv"));
    assertThat(FileBytes.isThere(link)).isTrue();
    assertThat(wrong(link)).contains("is a link that leads to nothing");
  }

  @Test
  void aLinkToItselfIsRefused() throws IOException {
    Path link = folders.root().resolve("log.csv");
    Files.createSymbolicLink(link, link);
    assertThat(wrong(link)).contains("is a link that leads to nothing");
  }

  private static boolean madePipe(Path pipe) throws InterruptedException {
    try {
      return new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folders.root().resolve("log.csv"), text);
  }

  private TextFile.Result read(Path file) {
    return TextFile.read(folders, file, LARGEST);
  }

  private String wrong(Path file) {
    assertThat(read(file).text()).isEmpty();
    assertThat(read(file).problems()).hasSize(1);
    return read(file).problems().get(0).toString();
  }
}
