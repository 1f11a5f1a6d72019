package limberboard.calendar;

import java.nio.charset.StandardCharsets;

/**
 * Folds lines as RFC 5545, section 3.1, asks: none longer than 75 octets of UTF-8, each further
 * piece beginning with a space, and no character cut in two.
 */
final class Folding {
  private static final int OCTETS = 75;
  private static final String LINE_END = "\r\n";

  private Folding() {}

  /** The text with its long lines folded; its lines end with CR LF, as those made here do. */
  static String fold(String text) {
    StringBuilder folded = new StringBuilder(text.length());
    int length = 0;
    for (int i = 0; i < text.length(); ) {
      int end = i + Character.charCount(text.codePointAt(i));
      String character = text.substring(i, end);
      boolean endsLine = character.equals("\r") || character.equals("\n");
      int octets = character.getBytes(StandardCharsets.UTF_8).length;
      if (!endsLine && length + octets > OCTETS) {
        folded.append(LINE_END).append(' ');
        length = 1;
      }
      folded.append(character);
      length = endsLine ? 0 : length + octets;
      i = end;
    }
    return folded.toString();
  }
}
