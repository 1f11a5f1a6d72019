package limberboard.boat;

import java.util.regex.Pattern;

/** Counted uses as the log has them: a whole number of up to eight digits, under a plain name. */
public final class LogCount {
  private static final Pattern FORM = Pattern.compile("[0-9]{1,8}");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");

  private LogCount() {}

  /** Reads a count. */
  public static Typed<Integer> read(String text) {
    String bare = text.strip();
    if (FORM.matcher(bare).matches()) {
      return new Typed.Good<>(Integer.parseInt(bare));
    }
    if (NUMBER.matcher(bare).matches()) {
      return new Typed.Bad<>(
          "\"" + text + "\" has too many digits", "write a whole number of at most eight digits");
    }
    return new Typed.Bad<>("\"" + text + "\" is no count", "write a whole number such as 12");
  }

  /** Says whether a count can be written. */
  public static Typed<Integer> check(int count) {
    return read(write(count));
  }

  /** Reads the name under which a new column counts uses. */
  public static Typed<String> name(String use) {
    return NAME.matcher(use).matches() && LogWords.countsUses(use)
        ? new Typed.Good<>(use)
        : new Typed.Bad<>(
            "\"" + use + "\" cannot be counted",
            "a use is a word of small letters and hyphens, such as hoists or nights");
  }

  /** The count as it is written. */
  static String write(int count) {
    return Integer.toString(count);
  }
}
