package limberboard.library.problem;

import java.util.Locale;

/**
 * Something in a file that is not as it should be.
 *
 * @param severity how bad it is
 * @param file relative to the workspace, with {@code /}
 * @param line from 1; 0 when the whole file is meant
 * @param key the header key or other thing in question, or empty
 * @param wrong what is wrong
 * @param right what would be right
 */
public record Problem(
    Severity severity, String file, int line, String key, String wrong, String right) {

  private static final int LONGEST = 600;

  /** Shortens what would not fit on a line and puts it on one. */
  public Problem {
    key = onOneLine(key);
    wrong = onOneLine(wrong);
    right = onOneLine(right);
  }

  private static String onOneLine(String text) {
    String line = text.replace('\n', ' ').replace('\r', ' ');
    return line.length() <= LONGEST
        ? line
        : line.substring(0, LONGEST / 2) + " … " + line.substring(line.length() - LONGEST / 2);
  }

  /** How bad a problem is. */
  public enum Severity {
    /** Something does not work. */
    ERROR,
    /** Worth a look. */
    WARNING,
    /** Not wrong, but it could be better; only said to those who ask for it. */
    ADVICE
  }

  /** A problem that makes something not work. */
  public static Problem error(String file, int line, String key, String wrong, String right) {
    return new Problem(Severity.ERROR, file, line, key, wrong, right);
  }

  /** A problem worth a look. */
  public static Problem warning(String file, int line, String key, String wrong, String right) {
    return new Problem(Severity.WARNING, file, line, key, wrong, right);
  }

  /** The same, taken as advice. */
  public Problem asAdvice() {
    return new Problem(Severity.ADVICE, file, line, key, wrong, right);
  }

  /** One line: {@code file:line: key: what is wrong; what would be right}. */
  @Override
  public String toString() {
    return file
        + (line > 0 ? ":" + line : "")
        + ": "
        + (severity == Severity.ERROR ? "" : severity.name().toLowerCase(Locale.ROOT) + ": ")
        + (key.isEmpty() ? "" : key + ": ")
        + wrong
        + (right.isEmpty() ? "" : "; " + right);
  }
}
