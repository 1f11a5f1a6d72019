package limberboard.words;

/**
 * What is left of a word without the endings of plurals and of verbs, so that its forms count as
 * one: <i>seacocks</i> and <i>seacock</i>, <i>charging</i> and <i>charge</i>. Stateless.
 */
public final class Stem {
  private static final int SHORTEST = 4;

  private Stem() {}

  /**
   * The stem of a word.
   *
   * @param word in lower case
   */
  public static String of(String word) {
    String stem = word;
    if (stem.endsWith("ing")) {
      stem = single(cut(stem, "ing"), stem);
    } else if (stem.endsWith("ed")) {
      stem = single(cut(stem, "ed"), stem);
    } else if (stem.endsWith("es")) {
      stem = cut(stem, "es");
    } else if (!stem.endsWith("ss")) {
      stem = cut(stem, "s");
    }
    return cut(stem, "e");
  }

  private static String cut(String word, String ending) {
    int left = word.length() - ending.length();
    return word.endsWith(ending) && left >= SHORTEST - 1 ? word.substring(0, left) : word;
  }

  /** The one letter of two alike that an ending brought with it: bedding, bed. */
  private static String single(String stem, String word) {
    int last = stem.length() - 1;
    boolean twice =
        !stem.equals(word)
            && last > SHORTEST - 2
            && stem.charAt(last) == stem.charAt(last - 1)
            && "lsz".indexOf(stem.charAt(last)) < 0;
    return twice ? stem.substring(0, last) : stem;
  }
}
