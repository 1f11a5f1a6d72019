package limberboard.search;

/**
 * A word of a text, as it is searched: in lower case, without accents and possessive endings.
 *
 * @param word the word
 * @param start where it begins in the text
 * @param end where it ends in the text
 */
record Token(String word, int start, int end) {
  /** Another word in its place. */
  Token as(String other) {
    return new Token(other, start, end);
  }
}
