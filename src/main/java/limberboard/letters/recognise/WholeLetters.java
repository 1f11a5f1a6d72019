package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Whole letters of the list that comes with the program, each of which a person said to be urgent
 * or not: how danger is told that is there now, and how the same words tell of what is over, of
 * others, or of nothing. Immutable.
 */
final class WholeLetters {
  private static final String LIST = "whole-letters.txt";
  private static final String URGENT = "urgent: ";
  private static final String CALM = "calm: ";

  private final List<Known> all;

  /**
   * A letter.
   *
   * @param text as it is written
   * @param stems what its words have, by their stems
   * @param sentences what its sentences have, one by one; none where it is urgent, since nobody
   *     said which of them tells of the danger
   * @param urgent whether somebody is in danger now
   */
  record Known(String text, Set<String> stems, List<Set<String>> sentences, boolean urgent) {}

  WholeLetters(TextParser parser, DangerSentences danger) {
    all = WordList.lines(LIST).parallelStream().map(line -> known(line, parser, danger)).toList();
  }

  private static Known known(String line, TextParser parser, DangerSentences danger) {
    boolean urgent = line.startsWith(URGENT);
    MarkedLine letter = MarkedLine.of(letter(line));
    LetterText text = parser.read(letter.subject(), letter.text());
    List<Set<String>> sentences = new ArrayList<>();
    for (int sentence = 0; !urgent && sentence < text.sentences(); sentence++) {
      sentences.add(KeyNumbers.littleRoom(danger.keys(text.ofSentence(sentence))));
    }
    Set<String> stems = KeyNumbers.littleRoom(TopicExamples.keys(text.words()));
    return new Known(text.text(), stems, sentences, urgent);
  }

  /** The letters. */
  List<Known> all() {
    return all;
  }

  /** The letters as lines that name boats, without what was said of them. */
  static List<String> lines() {
    return WordList.lines(LIST).stream().map(WholeLetters::letter).toList();
  }

  private static String letter(String line) {
    if (line.startsWith(URGENT)) {
      return line.substring(URGENT.length());
    }
    if (line.startsWith(CALM)) {
      return line.substring(CALM.length());
    }
    throw new IllegalStateException(
        LIST + ": a line begins with neither " + URGENT + "nor " + CALM + "but is: " + line);
  }
}
