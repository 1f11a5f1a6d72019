package limberboard.search;

/**
 * A rough key of how an English word sounds: consonants only, with letters that sound alike made
 * equal. Of several words that a misspelt one may stand for, those with its key are likelier.
 */
final class SoundKey {
  private SoundKey() {}

  /** The key of a word in lower case. */
  static String of(String word) {
    String sound =
        word.replace("ph", "f")
            .replace("gh", "")
            .replace("kn", "n")
            .replace("wr", "r")
            .replace("ck", "k")
            .replaceAll("dg(?=[eiy])", "j")
            .replaceAll("g(?=[eiy])", "j")
            .replaceAll("c(?=[eiy])", "s")
            .replaceAll("ti(?=o)", "s")
            .replaceAll("si(?=o)", "s")
            .replace('c', 'k')
            .replace('q', 'k')
            .replace('z', 's')
            .replace("x", "ks");
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < sound.length(); i++) {
      char letter = sound.charAt(i);
      boolean silent = i > 0 && "aeiouyhw".indexOf(letter) >= 0;
      char heard = i == 0 && "aeiouy".indexOf(letter) >= 0 ? 'a' : letter;
      boolean doubled = key.length() > 0 && key.charAt(key.length() - 1) == heard;
      if (!silent && !doubled) {
        key.append(heard);
      }
    }
    return key.toString();
  }
}
