package limberboard.letters.inbox;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.letters.mail.Mailbox;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * From whom answers are, as the workspace's file {@code letters/from} says: one line {@code Name
 * <address>}, or the address alone; lines that begin with {@code #} are remarks.
 *
 * @param from who answers; {@link #NOBODY} where there is no such file or it cannot be used
 * @param problem what is wrong with the file
 */
public record YardAddress(Mailbox from, Optional<Problem> problem) {
  /** An answer whose sender nobody has named: its address leads nowhere. */
  public static final Mailbox NOBODY = new Mailbox("", Mailbox.NOWHERE);

  /** The file's name in the folder of letters. */
  public static final String FILE = "from";

  private static final int LARGEST = 10_000;
  private static final int LONGEST = 254;
  private static final String RIGHT =
      "write one line such as Tarnwick Boatyard <office@tarnwick.example>; until then answers are"
          + " from an address that leads nowhere";
  private static final String ATOM = "[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+";
  private static final String LABEL = "[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?";

  /** RFC 5322, section 3.4.1, without quoted parts and literals, which no yard's address needs. */
  private static final Pattern ADDRESS =
      Pattern.compile(ATOM + "(?:\\." + ATOM + ")*@" + LABEL + "(?:\\." + LABEL + ")*");

  private static final Pattern NAMED = Pattern.compile("([^<>]*)<([^<>]*)>");
  private static final Pattern HIDDEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\u2028\\u2029]");

  /** Reads the file of a workspace. */
  public static YardAddress read(WorkspaceFolders folders) {
    Path file = folders.letters().resolve(FILE);
    if (!FileBytes.isThere(file)) {
      return new YardAddress(NOBODY, Optional.empty());
    }
    TextFile.Result text = TextFile.read(folders, file, LARGEST);
    if (!text.problems().isEmpty()) {
      return new YardAddress(NOBODY, text.problems().stream().findFirst());
    }
    List<String> lines =
        text.text()
            .lines()
            .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
            .toList();
    if (lines.size() != 1) {
      return unusable(folders, file, lines.isEmpty() ? "names nobody" : "has more than one line");
    }
    return parse(lines.get(0))
        .map(from -> new YardAddress(from, Optional.empty()))
        .orElseGet(() -> unusable(folders, file, "is not an address that can send a letter"));
  }

  /** Whether somebody has said from whom answers are. */
  public boolean isSet() {
    return !from.address().equals(Mailbox.NOWHERE);
  }

  /**
   * Reads {@code Name <address>} or an address alone.
   *
   * @return empty for what is neither, has a line end or anything else that is not seen in it, or
   *     is too long
   */
  public static Optional<Mailbox> parse(String written) {
    String line = written.strip();
    if (HIDDEN.matcher(line).find()) {
      return Optional.empty();
    }
    Matcher named = NAMED.matcher(line);
    boolean hasName = named.matches();
    String address = (hasName ? named.group(2) : line).strip();
    String name = hasName ? named.group(1).strip().replaceAll("^\"(.*)\"$", "$1") : "";
    return address.length() <= LONGEST
            && name.length() <= LONGEST
            && ADDRESS.matcher(address).matches()
        ? Optional.of(new Mailbox(name, address))
        : Optional.empty();
  }

  private static YardAddress unusable(WorkspaceFolders folders, Path file, String wrong) {
    return new YardAddress(
        NOBODY, Optional.of(Problem.error(folders.relative(file), 0, "", wrong, RIGHT)));
  }
}
