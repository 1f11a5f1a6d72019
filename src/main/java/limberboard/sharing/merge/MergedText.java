package limberboard.sharing.merge;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A text of settled pieces with conflicts between them.
 *
 * @param pieces in order
 */
public record MergedText(List<Piece> pieces) {
  /** Copies the list. */
  public MergedText {
    pieces = List.copyOf(pieces);
  }

  /** A piece of the text. */
  public sealed interface Piece {}

  /** A piece on which nothing is open. */
  record Settled(String text) implements Piece {}

  /** A piece that two people changed differently. */
  record Open(Conflict conflict) implements Piece {}

  /** A text without conflicts. */
  static MergedText settled(String text) {
    return new MergedText(List.of(new Settled(text)));
  }

  /** What is open, in order. */
  public List<Conflict> conflicts() {
    List<Conflict> all = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece instanceof Open open) {
        all.add(open.conflict());
      }
    }
    return all;
  }

  /**
   * The text with every conflict settled.
   *
   * @param choice is asked once for each
   */
  public String text(Function<Conflict, Choice> choice) {
    StringBuilder text = new StringBuilder();
    for (Piece piece : pieces) {
      text.append(
          piece instanceof Open open
              ? open.conflict().text(choice.apply(open.conflict()))
              : ((Settled) piece).text());
    }
    return text.toString();
  }
}
