package limberboard.desktop.parts;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What one entry of a {@link CardList} shows.
 *
 * @param heading shown above the entry when it begins a group, or empty
 * @param title what it is called
 * @param kind a word beside the title, or empty
 * @param detail a sentence or passage below, or empty
 * @param marks parts of the detail to be marked
 * @param note a last line, such as a reason, or empty
 * @param muted whether it is shown as of second rank
 * @param tick whether it has a box to be ticked
 */
public record Card(
    String heading,
    String title,
    String kind,
    String detail,
    List<Part> marks,
    String note,
    boolean muted,
    Tick tick) {

  /** Copies the marks. */
  public Card {
    marks = List.copyOf(marks);
  }

  /** A card without a box. */
  public Card(
      String heading,
      String title,
      String kind,
      String detail,
      List<Part> marks,
      String note,
      boolean muted) {
    this(heading, title, kind, detail, marks, note, muted, Tick.NONE);
  }

  /** The box before a card. */
  public enum Tick {
    /** There is none. */
    NONE,
    /** It is empty. */
    OFF,
    /** It is ticked. */
    ON
  }

  /**
   * A part of a text.
   *
   * @param start first character
   * @param end after the last character
   */
  public record Part(int start, int end) {}

  /** A card with a title and a sentence. */
  public static Card of(String title, String detail) {
    return new Card("", title, "", detail, List.of(), "", false);
  }

  /** The same card beginning a group. */
  public Card under(String group) {
    return new Card(group, title, kind, detail, marks, note, muted, tick);
  }

  /** The same card with a word beside its title. */
  public Card ofKind(String word) {
    return new Card(heading, title, word, detail, marks, note, muted, tick);
  }

  /** The same card with a last line. */
  public Card noting(String line) {
    return new Card(heading, title, kind, detail, marks, line, muted, tick);
  }

  /** The same card, of second rank. */
  public Card second() {
    return new Card(heading, title, kind, detail, marks, note, true, tick);
  }

  /** The same card with a box before it. */
  public Card ticked(boolean on) {
    return new Card(heading, title, kind, detail, marks, note, muted, on ? Tick.ON : Tick.OFF);
  }

  /** Everything on the card as it reads, a line for each part of it. */
  public String lines() {
    return Stream.of(title + (kind.isEmpty() ? "" : " (" + kind + ")"), detail, note)
        .filter(line -> !line.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  /** Everything on the card as one sentence, for somebody who listens to it. */
  public String spoken() {
    StringBuilder all = new StringBuilder(tick == Tick.ON ? "Ticked: " : "").append(title);
    for (String part : List.of(kind, detail, note)) {
      if (!part.isEmpty()) {
        all.append(", ").append(part);
      }
    }
    return all.toString();
  }
}
