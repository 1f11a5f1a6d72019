package limberboard.upkeep.shopping;

import java.util.List;

/**
 * Pieces that are cut from one length, one after another.
 *
 * @param from what they are cut from, in words: {@code remnant of 3 m}, {@code reel of 50 m}
 * @param isRemnant whether it is in stock already
 * @param length how long that is, in metres
 * @param pieces the pieces' lengths in metres, the longest first; never empty
 */
public record Cut(String from, boolean isRemnant, double length, List<Double> pieces) {
  /** Copies the list. */
  public Cut {
    pieces = List.copyOf(pieces);
  }

  /** The length of the pieces together, in metres. */
  public double used() {
    return pieces.stream().mapToDouble(Double::doubleValue).sum();
  }
}
