package limberboard.writing.form;

import java.util.List;

/** What a field of a header says. */
public sealed interface FieldValue {
  /**
   * One text.
   *
   * @param text the text, without quotes; empty where the key stands with nothing behind it
   */
  record Text(String text) implements FieldValue {}

  /**
   * Texts in a list.
   *
   * @param entries the texts, without quotes
   */
  record Many(List<String> entries) implements FieldValue {
    /** Copies the list. */
    public Many {
      entries = List.copyOf(entries);
    }
  }

  /**
   * Keys within one another, or a list of such.
   *
   * @param yaml as it is written, moved to the left margin, with line ends {@code \n}
   */
  record Nested(String yaml) implements FieldValue {}
}
