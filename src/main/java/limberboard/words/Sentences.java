package limberboard.words;

import java.util.List;

/** Small changes to words so that they fit a sentence. Stateless. */
public final class Sentences {
  private Sentences() {}

  /** With a capital at its beginning. */
  public static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** A title within a sentence: a small letter first, unless it begins with an abbreviation. */
  public static String lowered(String title) {
    boolean abbreviation = title.length() > 1 && !Character.isLowerCase(title.charAt(1));
    return abbreviation || title.isEmpty()
        ? title
        : Character.toLowerCase(title.charAt(0)) + title.substring(1);
  }

  /** An id or answer of the files with spaces for hyphens. */
  public static String spoken(String id) {
    return id.replace('-', ' ');
  }

  /** In typographic quotation marks. */
  public static String quoted(String text) {
    return "“" + text + "”";
  }

  /**
   * A list: {@code a, b and c}.
   *
   * @param last what stands before the last: {@code and}, {@code or}
   */
  public static String list(List<String> parts, String last) {
    int end = parts.size() - 1;
    return end < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, end)) + " " + last + " " + parts.get(end);
  }
}
