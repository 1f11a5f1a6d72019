package limberboard.letters.recognise;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A line of a list that shows how owners write, in which marks stand for the names of boats: {@code
 * [own]} for the one that the letter is about, {@code [other]} for one in passing, {@code [former]}
 * for one that the writer had, hired or saw, {@code [no]} for what is no boat at all; with {@code
 * :lower} or {@code :upper} where the name is written so.
 *
 * @param subject the letter's subject, which stands before it as {@code Subject: … / }, or nothing
 * @param text the rest, with a name for each mark
 */
record MarkedLine(String subject, String text) {
  /** The names that stand for the marks. */
  static final Map<String, String> NAMES =
      Map.of("own", "Fulmar", "other", "Razorbill", "former", "Guillemot", "no", "Kittiwake");

  private static final String SUBJECT = "Subject: ";
  private static final String END_OF_SUBJECT = " / ";
  private static final Pattern MARK =
      Pattern.compile("\\[(own|other|former|no)(?::(lower|upper))?\\]");

  /** Reads a line. */
  static MarkedLine of(String line) {
    String named = MARK.matcher(line).replaceAll(MarkedLine::name);
    if (!named.startsWith(SUBJECT)) {
      return new MarkedLine("", named);
    }
    int end = named.indexOf(END_OF_SUBJECT);
    return end < 0
        ? new MarkedLine(named.substring(SUBJECT.length()), "")
        : new MarkedLine(
            named.substring(Math.min(end, SUBJECT.length()), end),
            named.substring(end + END_OF_SUBJECT.length()));
  }

  private static String name(MatchResult mark) {
    String name = NAMES.get(mark.group(1));
    return Optional.ofNullable(mark.group(2))
        .map(
            how ->
                how.equals("lower") ? name.toLowerCase(Locale.ROOT) : name.toUpperCase(Locale.ROOT))
        .orElse(name);
  }
}
