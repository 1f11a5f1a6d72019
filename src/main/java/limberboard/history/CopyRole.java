package limberboard.history;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.Own;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;

/**
 * Whose a copy of the workspace is. It stands in the repository's own settings, which are never
 * shared; where nothing stands it is an owner's. Each version recorded in it says so.
 *
 * @param role whose
 */
public record CopyRole(Own role) {
  private static final String SECTION = "limberboard";
  private static final String KEY = "copy";
  private static final String TRAILER = "Limberboard-Copy: ";

  /** Whose copy a repository is. */
  public static CopyRole of(Repository repository) {
    String word = repository.getConfig().getString(SECTION, null, KEY);
    return new CopyRole(
        Arrays.stream(Own.values())
            .filter(own -> own.word().equals(word))
            .findFirst()
            .orElse(Own.OWNER));
  }

  /** Says whose copy a repository is. */
  public void writeTo(Repository repository) throws IOException {
    StoredConfig config = repository.getConfig();
    config.setString(SECTION, null, KEY, role.word());
    config.save();
  }

  /** The last line of what is said of a version that this copy records. */
  public String trailer() {
    return TRAILER + role.word();
  }

  /** In whose copy a version was recorded; empty when it does not say, as when git recorded it. */
  public static Optional<Own> recordedIn(String message) {
    List<String> lines = message.lines().filter(line -> line.startsWith(TRAILER)).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Arrays.stream(Own.values())
            .filter(own -> (TRAILER + own.word()).equals(lines.get(lines.size() - 1).strip()))
            .findFirst();
  }
}
