package limberboard.desktop.parts;

/**
 * The one place at which two texts differ.
 *
 * @param at where it begins in both
 * @param removed how many characters of the first are not in the second
 * @param inserted what the second has in their place
 */
record TextChange(int at, int removed, String inserted) {

  /** The least change that makes one text of another. */
  static TextChange between(String before, String after) {
    int shorter = Math.min(before.length(), after.length());
    int at = 0;
    while (at < shorter && before.charAt(at) == after.charAt(at)) {
      at++;
    }
    int same = 0;
    while (same < shorter - at
        && before.charAt(before.length() - 1 - same) == after.charAt(after.length() - 1 - same)) {
      same++;
    }
    return new TextChange(
        at, before.length() - same - at, after.substring(at, after.length() - same));
  }
}
