package limberboard.desktop.letters;

/**
 * Undoes the line breaks that mail programs put into paragraphs, so that a letter reads well at any
 * width. Each break becomes a space, so that every word stays at its place.
 */
final class LetterLines {
  private static final int LEAST_WIDTH = 55;
  private static final int MOST_WIDTH = 100;

  private LetterLines() {}

  /** The same text, as long as before, with paragraphs in one line. */
  static String joined(String text) {
    String[] lines = text.split("\n", -1);
    int width = 0;
    for (String line : lines) {
      width = line.length() <= MOST_WIDTH ? Math.max(width, line.length()) : width;
    }
    if (width < LEAST_WIDTH) {
      return text;
    }
    StringBuilder joined = new StringBuilder(lines[0]);
    for (int i = 1; i < lines.length; i++) {
      joined.append(isBroken(lines[i - 1], lines[i], width) ? ' ' : '\n').append(lines[i]);
    }
    return joined.toString();
  }

  /** Whether a line was broken only because its next word had no room. */
  private static boolean isBroken(String line, String next, int width) {
    if (line.isBlank() || next.isEmpty() || !Character.isLetterOrDigit(next.charAt(0))) {
      return false;
    }
    int space = next.indexOf(' ');
    String word = space < 0 ? next : next.substring(0, space);
    boolean numbered = word.matches("[0-9]+[.):].*|[0-9]+");
    return !numbered && line.length() + 1 + word.length() > width;
  }
}
