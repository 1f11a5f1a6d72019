package limberboard.print.type;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts the letters of a page on paper. What the paper's typeface does not have is never dropped
 * without a word: it stands as {@code \u25a1}, and the page says at its head which characters these
 * are. For one page, on one thread.
 */
public final class PaperLetters {
  private static final int NO_SUCH_LETTER = '\u25a1';
  private static final int MOST_NAMED = 12;
  private static final int FIRST_DOUBTFUL = 0x250;
  private final Set<Integer> missing = new LinkedHashSet<>();

  /** The character that stands for another on paper. */
  public int shown(int c) {
    if (c < FIRST_DOUBTFUL || isUnseen(c)) {
      return c;
    }
    int like = alike(c);
    if (InterFonts.shows(like)) {
      return like;
    }
    missing.add(c);
    return NO_SUCH_LETTER;
  }

  /** Boxes to tick are drawn with the boxes that the typeface has. */
  private static int alike(int c) {
    return switch (c) {
      case '\u2610' -> '\u25a1';
      case '\u2611', '\u2612' -> '\u25a0';
      default -> c;
    };
  }

  /** What nobody would see anyway: joiners, marks of direction, choices of form. */
  private static boolean isUnseen(int c) {
    int type = Character.getType(c);
    return type == Character.FORMAT || c >= 0xfe00 && c <= 0xfe0f || Character.isWhitespace(c);
  }

  /** What the page says of characters that are missing; empty when none is. */
  public String notice() {
    if (missing.isEmpty()) {
      return "";
    }
    String named =
        missing.stream()
            .limit(MOST_NAMED)
            .map(PaperLetters::named)
            .collect(Collectors.joining(", "));
    int more = missing.size() - MOST_NAMED;
    return "Some characters cannot be printed here and stand as \u25a1: "
        + named
        + (more > 0 ? " and " + more + " more" : "")
        + ". Read the page on screen for them.";
  }

  private static String named(int c) {
    String name = Character.getName(c);
    String code = String.format(java.util.Locale.ROOT, "U+%04X", c);
    return name == null ? code : code + " " + name.toLowerCase(java.util.Locale.ROOT);
  }
}
