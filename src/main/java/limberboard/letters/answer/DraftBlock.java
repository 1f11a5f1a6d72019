package limberboard.letters.answer;

import java.util.List;
import java.util.Optional;

/**
 * A piece of a draft that is written, edited and written anew by itself. Immutable.
 *
 * @param id which piece it is; the same in every draft of the same letter
 * @param written what the program has written
 * @param edit what a person has put in its place, if anything
 */
public record DraftBlock(String id, List<DraftLine> written, Optional<Edit> edit) {
  /** Copies the list. */
  public DraftBlock {
    written = List.copyOf(written);
  }

  /**
   * What a person has put in the place of a piece.
   *
   * @param text its text; empty leaves the piece out
   * @param grounds what the program had written when it was edited
   */
  public record Edit(String text, List<DraftLine> grounds) {
    /** Copies the list. */
    public Edit {
      grounds = List.copyOf(grounds);
    }
  }

  /** A piece that nobody has touched. */
  public DraftBlock(String id, List<DraftLine> written) {
    this(id, written, Optional.empty());
  }

  /** The same with a person's text; the text that the program has written takes an edit back. */
  public DraftBlock edited(String text) {
    return text.strip().equals(DraftText.of(written).strip())
        ? new DraftBlock(id, written)
        : new DraftBlock(id, written, Optional.of(new Edit(text, written)));
  }

  /** The same as the program writes it. */
  public DraftBlock asWritten() {
    return new DraftBlock(id, written);
  }

  /** The same as it is written now: what a person has put in its place stays. */
  DraftBlock writtenAs(List<DraftLine> now) {
    return new DraftBlock(id, now, edit);
  }

  /** Whether a person has edited it. */
  public boolean isEdited() {
    return edit.isPresent();
  }

  /**
   * Whether a person has edited it and the program would write something else now than it had
   * written then: its grounds changed.
   */
  public boolean groundsChanged() {
    return edit.filter(by -> !by.grounds().equals(written)).isPresent();
  }

  /** Whether it is nothing but entries of a list, as the program has written it. */
  boolean isList() {
    return edit.isEmpty() && written.stream().allMatch(line -> line.kind() == DraftLine.Kind.ITEM);
  }

  /** Its text as it stands, lines ending in a line feed; empty when it is left out. */
  public String text() {
    return edit.map(by -> by.text().isBlank() ? "" : by.text().strip() + "\n")
        .orElseGet(() -> DraftText.of(written));
  }
}
