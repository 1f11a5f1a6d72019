package limberboard.library;

import java.util.regex.Pattern;

/** What pages, causes, checks and answers may be called: lower-case letters, digits and hyphens. */
final class Ids {
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private Ids() {}

  /** Whether the text may be an id. */
  static boolean isId(String text) {
    return text.length() <= Limits.NAME_CHARACTERS && ID.matcher(text).matches();
  }
}
