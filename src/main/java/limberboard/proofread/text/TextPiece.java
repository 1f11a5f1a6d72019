package limberboard.proofread.text;

import java.util.List;
import limberboard.library.value.Condition;

/**
 * A piece of a page: a step, or a paragraph, a table's row, an item of a list without numbers.
 *
 * @param step its number; 0 when it is no step
 * @param text its words, without any marks
 * @param sentences the same in sentences
 * @param line the line of the file on which it begins, from 1
 * @param heading the heading it stands under, or empty
 * @param only the boats that the sections around it are for; all must hold
 * @param links targets of its links
 */
public record TextPiece(
    int step,
    String text,
    List<Sentence> sentences,
    int line,
    String heading,
    List<Condition> only,
    List<String> links) {

  /** Copies the lists. */
  public TextPiece {
    sentences = List.copyOf(sentences);
    only = List.copyOf(only);
    links = List.copyOf(links);
  }

  /** A passage in sentences. */
  public static TextPiece of(
      int step, String text, int line, String heading, List<Condition> only, List<String> links) {
    return new TextPiece(step, text, Sentence.of(text), line, heading, only, links);
  }

  /** Whether it is a numbered step. */
  public boolean isStep() {
    return step > 0;
  }

  /** Whether any of its sentences has a phrase. */
  public boolean has(Phrase phrase) {
    return sentences.stream().anyMatch(sentence -> sentence.has(phrase));
  }
}
