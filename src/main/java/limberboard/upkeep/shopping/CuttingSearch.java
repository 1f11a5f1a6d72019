package limberboard.upkeep.shopping;

import java.util.Arrays;
import java.util.List;

/**
 * Spreads pieces over remnants, reels and lengths cut in the shop so that the least is bought, and
 * of equals the fewest packs. It begins with the longest piece in the tightest place; up to {@value
 * #EXACT} pieces it then tries every other way (branch and bound), up to {@value #MOST_STEPS}
 * steps.
 */
final class CuttingSearch {
  private static final int EXACT = 40;
  private static final int MOST_STEPS = 200_000;

  private final long[] pieces;
  private final LengthsForSale sale;
  private final CuttingLengths bins;
  private final int[] way;
  private final long least;
  private int[] best;
  private long bestBought;
  private int bestPacks;
  private int steps;

  /**
   * A search.
   *
   * @param pieces the longest first, each of which fits somewhere
   * @param remnants what there is
   * @param sale what can be had
   */
  CuttingSearch(long[] pieces, List<Long> remnants, LengthsForSale sale) {
    this.pieces = pieces.clone();
    this.sale = sale;
    this.bins = new CuttingLengths(remnants, sale);
    this.way = new int[pieces.length];
    long there = remnants.stream().mapToLong(Long::longValue).sum();
    this.least = Math.max(0, Arrays.stream(pieces).sum() - there);
  }

  /** For each piece the number of the length it is cut from; remnants come first. */
  int[] run() {
    tightestFirst();
    keep();
    if (pieces.length <= EXACT) {
      for (int i = pieces.length - 1; i >= 0; i--) {
        undo(i);
      }
      search(0);
    }
    return best.clone();
  }

  long bought() {
    return bestBought;
  }

  int packs() {
    return bestPacks;
  }

  private void tightestFirst() {
    for (int i = 0; i < pieces.length; i++) {
      int bin = tightest(pieces[i]);
      if (bin < 0 && sale.step() == 0) {
        bin = bins.openReel();
      }
      put(i, bin);
    }
  }

  /** The bin with the least room that holds the piece, or {@link LengthsForSale#BY_LENGTH}. */
  private int tightest(long piece) {
    int found = LengthsForSale.BY_LENGTH;
    for (int bin = 0; bin < bins.count(); bin++) {
      boolean fits = bins.room(bin) >= piece;
      if (fits && (found < 0 || bins.room(bin) < bins.room(found))) {
        found = bin;
      }
    }
    return found;
  }

  private void put(int i, int bin) {
    way[i] = bin;
    bins.put(bin, pieces[i]);
  }

  /** Takes back what was put last; a reel that is empty then was opened for it. */
  private void undo(int i) {
    int bin = way[i];
    bins.take(bin, pieces[i]);
    boolean reel = bin >= 0 && !bins.isRemnant(bin);
    if (reel && bins.load(bin) == 0) {
      bins.closeReel();
    }
  }

  private void keep() {
    best = way.clone();
    bestBought = bins.bought();
    bestPacks = bins.packs();
  }

  private boolean isBetter() {
    long bought = bins.bought();
    return bought < bestBought || bought == bestBought && bins.packs() < bestPacks;
  }

  private void search(int i) {
    if (++steps > MOST_STEPS || !isBetter() || bestBought == least && bestPacks <= 1) {
      return;
    }
    if (i == pieces.length) {
      keep();
      return;
    }
    for (int bin = 0; bin < bins.count(); bin++) {
      if (bins.room(bin) >= pieces[i] && isFirstOfItsRoom(bin)) {
        put(i, bin);
        search(i + 1);
        undo(i);
      }
    }
    if (sale.step() > 0) {
      put(i, LengthsForSale.BY_LENGTH);
      search(i + 1);
      undo(i);
    }
    if (sale.longest() >= pieces[i]) {
      put(i, bins.openReel());
      search(i + 1);
      undo(i);
    }
  }

  /** Two lengths with the same room and the same load are the same choice. */
  private boolean isFirstOfItsRoom(int bin) {
    for (int other = 0; other < bin; other++) {
      if (bins.room(other) == bins.room(bin)
          && bins.load(other) == bins.load(bin)
          && bins.isRemnant(other) == bins.isRemnant(bin)) {
        return false;
      }
    }
    return true;
  }
}
