package limberboard.print.sheet;

import limberboard.rigging.Rope;
import limberboard.rigging.RopeLength;
import limberboard.rigging.Thickness;
import limberboard.words.Sentences;
import limberboard.workings.QuantityWords;

/** What a list of ropes says of one of them, in words. Stateless. */
public final class RiggingWords {
  private static final String OPEN = "?";

  private RiggingWords() {}

  /** How it is cut and of what, or what is not known of it. */
  public static String cut(Rope rope) {
    return rope.isReckoned()
        ? pieces(rope) + " of " + stuff(rope)
        : Sentences.capital(String.join("; ", rope.open()));
  }

  /** How long it is cut: {@code 28 m}, {@code 2 × 11 m}; a question mark for a length not known. */
  static String pieces(Rope rope) {
    return pieces(
        rope.count(), rope.length() instanceof RopeLength.Cut cut ? metres(cut.cut()) : OPEN);
  }

  /** So many pieces of one length: {@code 2 × 11 m}. */
  static String pieces(int count, String length) {
    return count == 1 ? length : count + " × " + length;
  }

  /** What it is cut from: {@code 10 mm polyester, braid on braid}. */
  static String stuff(Rope rope) {
    String size =
        rope.thickness() instanceof Thickness.Chosen chosen ? size(chosen.millimetres()) : OPEN;
    return size + " " + rope.construction().title();
  }

  /** A thickness: {@code 10 mm}. */
  static String size(double millimetres) {
    return QuantityWords.plain(millimetres) + " mm";
  }

  /** A length: {@code 28 m}. */
  public static String metres(double metres) {
    return QuantityWords.plain(metres) + " m";
  }
}
