package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VanishedBoatTest {
  @TempDir Path folder;
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Notices notices = new Notices();
  private WorkspaceFolders folders;

  @BeforeEach
  void read() {
    folders = SmallWorkspace.copyTo(folder);
    new VanishedBoat(session, notices);
    session.replace(SmallWorkspace.read(folders));
  }

  @Test
  void aBoatWhoseFolderGoesIsMissedInWordsAndGreetedWhenItComesAgain() throws IOException {
    assertThat(notices.current()).isEmpty();
    Path boat = folders.boats().resolve("knot");
    Path away = Files.move(boat, folder.resolve("away"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(notices.current().orElseThrow().failure()).isTrue();
    assertThat(notices.current().orElseThrow().text())
        .startsWith("Knot can no longer be read")
        .contains("choose another boat");
    assertThat(session.boat()).isEmpty();
    Files.move(away, boat);
    session.replace(SmallWorkspace.read(folders));
    assertThat(notices.current().orElseThrow().text()).isEqualTo("Knot is here again.");
    assertThat(session.boat().orElseThrow().id()).isEqualTo("knot");
  }

  @Test
  void choosingAnotherBoatIsNoVanishing() throws IOException {
    session.choose(Optional.of("stint"));
    session.choose(Optional.empty());
    Files.move(folders.boats().resolve("knot"), folder.resolve("away"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(notices.current()).isEmpty();
  }
}
