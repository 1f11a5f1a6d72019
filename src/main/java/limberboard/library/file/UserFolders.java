package limberboard.library.file;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * The program's own folders of one person, outside any workspace: by the XDG Base Directory
 * Specification, and on macOS and Windows where programs keep such things there. Nothing is made by
 * asking; who writes makes the folder, as {@link SafeFiles} does.
 *
 * @param config what a person has chosen
 * @param state what is worth keeping until next time: traces not finished, the file of failures
 * @param cache what can be thrown away at any time
 */
public record UserFolders(Path config, Path state, Path cache) {
  /** System property: one folder that holds all of them, for tests and for a stick. */
  static final String ALL_IN = "limberboard.own";

  private static final String NAME = "limberboard";

  /**
   * The folders of a person.
   *
   * @param environment the environment's variables; one that is not an absolute path counts as not
   *     set
   * @param home the home folder
   * @param system the operating system's name, as {@code os.name} gives it
   */
  public static UserFolders of(Map<String, String> environment, Path home, String system) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      Path support = home.resolve("Library/Application Support").resolve(NAME);
      return new UserFolders(
          support, support.resolve("state"), home.resolve("Library/Caches").resolve(NAME));
    }
    if (name.startsWith("windows")) {
      Path roaming = path(environment, "APPDATA").orElse(home.resolve("AppData/Roaming"));
      Path local = path(environment, "LOCALAPPDATA").orElse(home.resolve("AppData/Local"));
      Path own = local.resolve(NAME);
      return new UserFolders(roaming.resolve(NAME), own.resolve("state"), own.resolve("cache"));
    }
    return new UserFolders(
        path(environment, "XDG_CONFIG_HOME").orElse(home.resolve(".config")).resolve(NAME),
        path(environment, "XDG_STATE_HOME").orElse(home.resolve(".local/state")).resolve(NAME),
        path(environment, "XDG_CACHE_HOME").orElse(home.resolve(".cache")).resolve(NAME));
  }

  /**
   * The folders of whoever runs the program: all in the folder that the system property {@code
   * limberboard.own} names, if it names one by its full path; without a home they lie in the
   * temporary folder.
   */
  public static UserFolders here() {
    return absolute(System.getProperty(ALL_IN, ""))
        .map(
            own ->
                new UserFolders(own.resolve("config"), own.resolve("state"), own.resolve("cache")))
        .orElseGet(UserFolders::ofPerson);
  }

  private static UserFolders ofPerson() {
    Path home =
        absolute(System.getProperty("user.home", ""))
            .or(() -> absolute(System.getProperty("java.io.tmpdir", "")))
            .orElseGet(() -> Path.of("").toAbsolutePath());
    return of(System.getenv(), home, System.getProperty("os.name", ""));
  }

  /**
   * A folder's name for what is kept of one workspace: the workspace's own name, for people, and a
   * number that tells two of the same name apart.
   */
  public static String named(WorkspaceFolders workspace) {
    Path name = workspace.root().getFileName();
    UUID path =
        UUID.nameUUIDFromBytes(workspace.root().toString().getBytes(StandardCharsets.UTF_8));
    return fileName(name == null ? "root" : name.toString()) + "-" + path;
  }

  /** A file's name: letters, digits and a few signs as they are, everything else by its number. */
  public static String fileName(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("*", "%2A");
  }

  private static Optional<Path> path(Map<String, String> environment, String variable) {
    return absolute(environment.getOrDefault(variable, ""));
  }

  private static Optional<Path> absolute(String text) {
    try {
      return Optional.of(Path.of(text)).filter(Path::isAbsolute);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
