package limberboard.library.header;

import java.util.regex.Pattern;
import limberboard.library.problem.Limits;

/** What pages, causes, checks and answers may be called: lower-case letters, digits and hyphens. */
public final class Ids {
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private Ids() {}

  /** Whether the text may be an id. */
  public static boolean isId(String text) {
    return text.length() <= Limits.NAME_CHARACTERS && ID.matcher(text).matches();
  }
}
