package limberboard.notes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A thought that was caught, to be worked in later. Immutable.
 *
 * @param id the file's name without its ending, such as {@code 2026-05-20-1}
 * @param written when, to the minute
 * @param page the page it is about, by its id
 * @param boat the boat it is about, by its id
 * @param picture its photo's file, beside the note
 * @param text what was written
 * @param end how it ended; empty while it waits
 */
public record QuickNote(
    String id,
    LocalDateTime written,
    Optional<String> page,
    Optional<String> boat,
    Optional<String> picture,
    String text,
    Optional<End> end) {

  /** How a note ended. */
  public enum How {
    /** What it says stands in the library now. */
    WORKED_IN("worked-in"),
    /** It was dropped. */
    DROPPED("dropped");

    private final String word;

    How(String word) {
      this.word = word;
    }

    /** The word in the file. */
    public String word() {
      return word;
    }
  }

  /**
   * The end of a note.
   *
   * @param day when
   * @param how how
   */
  public record End(LocalDate day, How how) {}

  /** The same note, ended so, or waiting again. */
  public QuickNote ended(Optional<End> so) {
    return new QuickNote(id, written, page, boat, picture, text, so);
  }
}
