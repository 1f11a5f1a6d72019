package limberboard.library.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The defaults are those of the XDG Base Directory Specification, version 0.8; the folders of macOS
 * and Windows are from memory.
 */
class UserFoldersTest {
  @Test
  void oneFolderCanHoldThemAll(@TempDir Path own) {
    String before = System.getProperty(UserFolders.ALL_IN);
    System.setProperty(UserFolders.ALL_IN, own.toString());
    try {
      assertEquals(
          new UserFolders(own.resolve("config"), own.resolve("state"), own.resolve("cache")),
          UserFolders.here());
    } finally {
      if (before == null) {
        System.clearProperty(UserFolders.ALL_IN);
      } else {
        System.setProperty(UserFolders.ALL_IN, before);
      }
    }
  }

  private static final Path HOME = Path.of("/home/ada").toAbsolutePath();

  @Test
  void withoutVariablesTheSpecificationsDefaultsCount() {
    UserFolders folders = UserFolders.of(Map.of(), HOME, "Linux");
    assertEquals(HOME.resolve(".config/limberboard"), folders.config());
    assertEquals(HOME.resolve(".local/state/limberboard"), folders.state());
    assertEquals(HOME.resolve(".cache/limberboard"), folders.cache());
  }

  @Test
  void variablesCountWhenTheyAreAbsolute() {
    String elsewhere = HOME.resolveSibling("elsewhere").toString();
    UserFolders folders =
        UserFolders.of(
            Map.of("XDG_STATE_HOME", elsewhere, "XDG_CACHE_HOME", "here", "XDG_CONFIG_HOME", ""),
            HOME,
            "Linux");
    assertEquals(Path.of(elsewhere).resolve("limberboard"), folders.state());
    assertEquals(HOME.resolve(".cache/limberboard"), folders.cache());
    assertEquals(HOME.resolve(".config/limberboard"), folders.config());
  }

  @Test
  void aVariableThatIsNoPathCountsAsNotSet() {
    UserFolders folders = UserFolders.of(Map.of("XDG_STATE_HOME", "/a\0b"), HOME, "Linux");
    assertEquals(HOME.resolve(".local/state/limberboard"), folders.state());
  }

  @Test
  void otherSystemsKeepThemWhereTheirProgramsDo() {
    UserFolders mac = UserFolders.of(Map.of(), HOME, "Mac OS X");
    assertEquals(HOME.resolve("Library/Caches/limberboard"), mac.cache());
    assertTrue(mac.state().startsWith(mac.config()));
    UserFolders windows = UserFolders.of(Map.of(), HOME, "Windows 11");
    assertEquals(HOME.resolve("AppData/Roaming/limberboard"), windows.config());
    assertEquals(HOME.resolve("AppData/Local/limberboard/state"), windows.state());
  }
}
