package limberboard.library.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFilesTest {
  @TempDir Path folder;

  @Test
  void writesAndReplaces() throws IOException {
    Path file = folder.resolve("new/folder/file.txt");
    SafeFiles.write(file, "one");
    SafeFiles.write(file, "two");
    assertThat(file).hasContent("two");
    assertThat(names(file.getParent())).containsExactly("file.txt");
  }

  @Test
  void aFullDiskLeavesTheOldFileWhole() throws IOException {
    Configuration small =
        Configuration.unix().toBuilder().setBlockSize(512).setMaxSize(4096).build();
    try (FileSystem disk = Jimfs.newFileSystem(small)) {
      Path file = disk.getPath("/disk/file.txt");
      SafeFiles.write(file, "precious");
      assertThatThrownBy(() -> SafeFiles.write(file, "x".repeat(100_000)))
          .isInstanceOf(IOException.class);
      assertThat(Files.readString(file)).isEqualTo("precious");
      assertThat(names(file.getParent())).containsExactly("file.txt");
    }
  }

  @Test
  void permissionsStayAndANewFileHasTheUsualOnes() throws IOException {
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    Path file = folder.resolve("file.txt");
    Path usual = Files.writeString(folder.resolve("usual.txt"), "made without us");
    SafeFiles.write(file, "one");
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(usual));
    for (String permissions : List.of("rw-rw-r--", "rw-r--r--", "rw-------", "rwxrw-rw-")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
      SafeFiles.write(file, "two");
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
          .isEqualTo(permissions);
    }
  }

  @Test
  void aLinkIsWrittenThroughAndStaysALink() throws IOException {
    Path file = Files.writeString(folder.resolve("shared.txt"), "one");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);
    SafeFiles.write(link, "two");
    assertThat(link).isSymbolicLink();
    assertThat(Files.isSymbolicLink(file)).isFalse();
    assertThat(file).hasContent("two");
  }

  @Test
  void aLinkToNothingOrToItselfAndAFolderAreLeftAlone() throws IOException {
    Path nothing = Files.createSymbolicLink(folder.resolve("a"), folder.resolve("away/file"));
    Path self = Files.createSymbolicLink(folder.resolve("b"), folder.resolve("b"));
    Path dir = Files.createDirectory(folder.resolve("c"));
    for (Path place : List.of(nothing, self, dir)) {
      assertThatThrownBy(() -> SafeFiles.write(place, "x")).isInstanceOf(IOException.class);
    }
    assertThat(nothing).isSymbolicLink();
    assertThat(self).isSymbolicLink();
    assertThat(folder.resolve("away")).doesNotExist();
    assertThat(names(folder)).containsExactlyInAnyOrder("a", "b", "c");
  }

  @Test
  void aKilledProcessLeavesOneWholeFile() throws IOException, InterruptedException {
    Path file = folder.resolve("file.txt");
    SafeFiles.write(file, Endless.text(0));
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Endless.class.getName(),
                file.toString())
            .redirectErrorStream(true)
            .start();
    int before = 0;
    for (int round = 0; round < 20 && before < 3; round++) {
      TimeUnit.MILLISECONDS.sleep(100);
      before = Integer.parseInt(Files.readString(file).lines().findFirst().orElseThrow());
    }
    writer.destroyForcibly().waitFor();
    String left = Files.readString(file);
    int number = Integer.parseInt(left.lines().findFirst().orElseThrow());
    assertThat(left).isEqualTo(Endless.text(number));
  }

  /** Writes the same file again and again until it is killed. */
  static final class Endless {
    private Endless() {}

    public static void main(String[] args) throws IOException {
      for (int i = 1; ; i++) {
        SafeFiles.write(Path.of(args[0]), text(i));
      }
    }

    static String text(int number) {
      return number + "\n" + Integer.toString(number % 10).repeat(200_000);
    }
  }

  private static List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(each -> each.getFileName().toString()).toList();
    }
  }
}
