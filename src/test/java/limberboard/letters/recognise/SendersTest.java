package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.WorkspaceReader;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.MailReader;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who writes of which boat. */
class SendersTest {
  @TempDir private Path folder;

  private static Letter from(String address) throws IOException {
    return MailReader.read(
        new ByteArrayInputStream(
            ("From: X <" + address + ">\n\nWet.").getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aSenderIsKnownByTheFileAlone() throws IOException {
    List<Boat> boats = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read().boats();
    assertThat(Senders.read(folder).boat(from("a@example.org"), boats)).isEmpty();
    Files.writeString(
        folder.resolve(Senders.FILE), "# ours\nA@example.org: dunlin\nb@x.org: gone\n");
    Senders read = Senders.read(folder);
    assertThat(read.boat(from("a@EXAMPLE.org"), boats).orElseThrow().id()).isEqualTo("dunlin");
    assertThat(read.boat(from("b@x.org"), boats)).isEmpty();
    assertThat(read.boat(MailReader.pasted("Wet."), boats)).isEmpty();
  }

  @Test
  void theFileIsNeverShared() throws IOException {
    assertThat(Files.readAllLines(Path.of(".gitignore"))).contains("**/letters/senders");
  }
}
