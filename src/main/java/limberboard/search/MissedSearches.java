package limberboard.search;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.file.FileBytes;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * The searches of one desk that were of no use, in a small file of the workspace that is never
 * shared: {@code index/searches}, one a line. The latest five hundred are kept. Not for the event
 * thread; safe for several programs at once.
 *
 * @param folders the workspace
 */
public record MissedSearches(WorkspaceFolders folders) {
  /** How many are kept. */
  public static final int MOST = 500;

  private static final int LARGEST = 200_000;
  private static final String FILE = "searches";
  private static final String OFF = "keep: no";
  private static final String ON = "keep: yes";
  private static final String HEAD =
      "# searches that were of no use, of this desk alone; never shared. \"keep: no\" keeps"
          + " none.\n";

  /** Where they are kept. */
  public Path file() {
    return folders.words().resolveSibling(FILE);
  }

  /**
   * Those that are kept, the latest last; none where the file is not there or cannot be read. Lines
   * that are not understood are left out.
   */
  public List<MissedSearch> all() {
    return lines().flatMap(line -> search(line).stream()).toList();
  }

  /** Whether they are kept. */
  public boolean areKept() {
    return lines().noneMatch(OFF::equals);
  }

  private Stream<String> lines() {
    return FileBytes.isThere(file())
        ? TextFile.read(folders, file(), LARGEST).text().lines()
        : Stream.empty();
  }

  /**
   * Keeps a search, where searches are kept. The same words on the same day are kept once.
   *
   * @return why it could not be kept; empty when it was, or is not to be
   */
  public Optional<Problem> add(MissedSearch search) {
    return change(
        before -> {
          boolean off = before.contains(OFF);
          if (off
              || before.stream().flatMap(s -> search(s).stream()).anyMatch(s -> same(s, search))) {
            return before;
          }
          List<String> now = new ArrayList<>(before);
          now.add(search.day() + " " + search.how().word() + " " + search.words());
          return now;
        });
  }

  private static boolean same(MissedSearch one, MissedSearch other) {
    return one.day().equals(other.day()) && one.words().equalsIgnoreCase(other.words());
  }

  /**
   * Says whether searches are kept from now on.
   *
   * @return why it could not be written; empty when it was
   */
  public Optional<Problem> keep(boolean kept) {
    return change(
        before -> {
          List<String> now = new ArrayList<>(before);
          now.removeAll(List.of(OFF, ON));
          now.add(0, kept ? ON : OFF);
          return now;
        });
  }

  /**
   * Takes all of them out of the file.
   *
   * @return why it could not be written; empty when it was
   */
  public Optional<Problem> forget() {
    return change(before -> before.stream().filter(line -> search(line).isEmpty()).toList());
  }

  private interface Edit {
    List<String> of(List<String> lines);
  }

  private Optional<Problem> change(Edit edit) {
    if (!Files.isDirectory(file().getParent())) {
      return Optional.empty();
    }
    return new SharedTextFile(folders, file(), LARGEST)
        .<Optional<Problem>>change(
            now -> {
              List<String> before = now.orElse(HEAD).lines().toList();
              List<String> after = edit.of(before);
              return after.equals(before)
                  ? Rewrite.leave(Optional.empty())
                  : Rewrite.write(
                      Optional.of(String.join("\n", latest(after)) + "\n"), Optional.empty());
            },
            Optional::of);
  }

  /** Lines that are no searches, and of the searches the latest. */
  private static List<String> latest(List<String> lines) {
    long over = lines.stream().filter(line -> search(line).isPresent()).count() - MOST;
    List<String> left = new ArrayList<>();
    for (String line : lines) {
      if (over > 0 && search(line).isPresent()) {
        over--;
      } else {
        left.add(line);
      }
    }
    return left;
  }

  private static Optional<MissedSearch> search(String line) {
    String[] parts = line.split(" ", 3);
    if (parts.length < 3) {
      return Optional.empty();
    }
    try {
      LocalDate day = LocalDate.parse(parts[0]);
      return Stream.of(MissedSearch.How.values())
          .filter(how -> how.word().equals(parts[1]))
          .findFirst()
          .flatMap(how -> MissedSearch.of(day, how, parts[2]));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
