package limberboard.library.header;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Texts as YAML writes them. */
public final class YamlScalar {
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}](?:[\\p{L}\\p{N} ._'’()/+-]*[\\p{L}\\p{N}._'’()/+-])?");
  private static final Pattern WORD = Pattern.compile("[A-Za-z0-9._-]+");
  private static final Set<String> SPECIAL =
      Set.of("null", "true", "false", "yes", "no", "on", "off", "y", "n");

  private YamlScalar() {}

  /** A key or a value of the program's own: an id, a number, a date. */
  public static String word(String text) {
    return WORD.matcher(text).matches() && isOrdinary(text) && !text.startsWith("--")
        ? text
        : quoted(text);
  }

  /** A value that a person wrote; quoted where it must be. */
  public static String text(String text) {
    return PLAIN.matcher(text).matches() && isOrdinary(text) ? text : quoted(text);
  }

  /** Whatever a header says, a word or a number or a sentence, in quotes only where it must be. */
  public static String value(String text) {
    boolean word = WORD.matcher(text).matches() && Character.isLetterOrDigit(text.charAt(0));
    return word ? word(text) : text(text);
  }

  /** The same in the quotes that stand there already, where they can hold it. */
  public static String like(String old, String text, boolean word) {
    if (old.startsWith("'") && text.chars().noneMatch(Character::isISOControl)) {
      return "'" + text.replace("'", "''") + "'";
    }
    if (old.startsWith("\"")) {
      return quoted(text);
    }
    return word ? word(text) : text(text);
  }

  /** The same in the quotes that stand there already; otherwise in quotes only where it must be. */
  public static String alike(String old, String text) {
    boolean quoted = old.startsWith("'") || old.startsWith("\"");
    return quoted ? like(old, text, false) : value(text);
  }

  /** Whether a text of several lines can stand as they are typed, each on a line of its own. */
  public static boolean isBlock(String text) {
    return text.contains("\n")
        && text.equals(text.strip())
        && text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n')
        && text.lines().noneMatch(line -> !line.isEmpty() && line.isBlank());
  }

  /** A text of several lines, each on a line of its own. */
  public static String block(String text, String lineEnd) {
    StringBuilder block = new StringBuilder("|-");
    text.lines().forEach(line -> block.append(lineEnd).append(line.isEmpty() ? "" : "  " + line));
    return block.toString();
  }

  private static boolean isOrdinary(String text) {
    return !SPECIAL.contains(text.toLowerCase(Locale.ROOT));
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> {
                  if (Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || c == 0xFEFF) {
                    quoted.append("\\u").append(Integer.toHexString(0x10000 + c).substring(1));
                  } else {
                    quoted.appendCodePoint(c);
                  }
                }
              }
            });
    return quoted.append('"').toString();
  }
}
