package limberboard.print.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InterFontsTest {
  private static final String REGULAR = "Inter-Regular.otf";

  @TempDir Path folder;

  @Test
  void oneCopyIsKeptAndMadeWholeAgain() throws IOException {
    Path copy = InterFonts.copy(REGULAR, folder.resolve("fonts")).orElseThrow();
    long size = Files.size(copy);
    assertThat(size).isGreaterThan(100_000);
    Files.write(copy, new byte[10]);
    assertThat(InterFonts.copy(REGULAR, folder.resolve("fonts"))).contains(copy);
    assertThat(Files.size(copy)).isEqualTo(size);
    assertThat(InterFonts.register(REGULAR, folder.resolve("fonts"))).isTrue();
  }

  @Test
  void aFolderThatCannotBeWrittenIsDoneWithout() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "a file where the folder would be");
    assertThat(InterFonts.copy(REGULAR, file)).isEmpty();
    assertThat(InterFonts.register(REGULAR, file)).isTrue();
  }
}
