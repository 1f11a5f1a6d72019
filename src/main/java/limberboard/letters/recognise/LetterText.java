package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.List;
import limberboard.search.TextWords.TextWord;

/**
 * What a letter says, word by word, with how each word is meant. Immutable.
 *
 * @param text the subject, a blank line, and what its writer said
 * @param words its words, in order
 * @param subjectWords how many of them are the subject's
 */
record LetterText(String text, List<SaidWord> words, int subjectWords) {
  LetterText {
    words = List.copyOf(words);
  }

  /**
   * One word.
   *
   * @param word the word
   * @param sentence the number of its sentence, from 0
   * @param clause the number of its clause, from 0
   * @param denied whether any negation reaches it
   * @param negated whether it is said not to be so: of a verb that is denied only what is wrong
   * @param over whether it tells of what was and has been put right
   * @param supposed whether it is only supposed
   * @param believed whether it is what somebody believes
   * @param asked whether it stands in a question
   */
  record SaidWord(
      TextWord word,
      int sentence,
      int clause,
      boolean denied,
      boolean negated,
      boolean over,
      boolean supposed,
      boolean believed,
      boolean asked) {
    /** Whether it is told as something that is so now. */
    boolean isSo() {
      return !negated && !over && !supposed;
    }
  }

  /** The number of sentences. */
  int sentences() {
    return words.isEmpty() ? 0 : words.get(words.size() - 1).sentence() + 1;
  }

  /** The words as search reads them. */
  List<TextWord> plain() {
    return words.stream().map(SaidWord::word).toList();
  }

  /** Whether a word is written as a name: with a capital, and not the first of its sentence. */
  boolean isName(int at) {
    boolean first = at == 0 || words.get(at).sentence() != words.get(at - 1).sentence();
    return !first && Character.isUpperCase(text.charAt(words.get(at).word().start()));
  }

  /** What was written from one word to before another. */
  String written(int from, int to) {
    return text.substring(words.get(from).word().start(), words.get(to - 1).word().end());
  }

  /** The words of one sentence. */
  List<SaidWord> ofSentence(int sentence) {
    List<SaidWord> found = new ArrayList<>();
    words.stream().filter(each -> each.sentence() == sentence).forEach(found::add);
    return found;
  }
}
