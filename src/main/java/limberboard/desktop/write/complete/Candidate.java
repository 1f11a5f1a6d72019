package limberboard.desktop.write.complete;

/**
 * Something that can stand at the caret.
 *
 * @param letters what is put in
 * @param title what a person reads
 * @param detail what it is, or empty
 */
public record Candidate(String letters, String title, String detail) {
  /** A word that needs no more to be said. */
  static Candidate of(String word) {
    return new Candidate(word, word, "");
  }
}
