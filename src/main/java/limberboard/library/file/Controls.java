package limberboard.library.file;

/**
 * Control characters in what people wrote. A terminal obeys them, a calendar must not have them,
 * and some turn the direction of writing round; so no output holds them.
 */
public final class Controls {
  private static final char SHOWN = '\u2400';
  private static final char SHOWN_DELETE = '\u2421';
  private static final char REPLACEMENT = '\ufffd';

  private Controls() {}

  /** Whether a character is a control character other than a line end or a tab. */
  public static boolean is(char c) {
    return (c < ' ' && c != '\n' && c != '\t')
        || (c >= '\u007f' && c <= '\u009f')
        || c == '\u2028'
        || c == '\u2029'
        || (c >= '\u202a' && c <= '\u202e')
        || (c >= '\u2066' && c <= '\u2069');
  }

  /**
   * The text with control characters made visible: {@code ␛} for escape. Line ends and tabs stay.
   */
  public static String visible(String text) {
    if (text.chars().noneMatch(c -> is((char) c))) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.length());
    text.chars().forEach(c -> shown.append(visible((char) c)));
    return shown.toString();
  }

  /** The character, made visible if it is a control character. */
  public static char visible(char c) {
    if (!is(c)) {
      return c;
    }
    if (c < ' ') {
      return (char) (SHOWN + c);
    }
    return c == '\u007f' ? SHOWN_DELETE : REPLACEMENT;
  }
}
