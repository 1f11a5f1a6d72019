package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;

/** Lengths that pieces are being cut from: remnants first, then reels as they are opened. */
final class CuttingLengths {
  private final LengthsForSale sale;
  private final List<Long> capacity = new ArrayList<>();
  private final List<Long> load = new ArrayList<>();
  private final int remnants;
  private long byLength;

  CuttingLengths(List<Long> remnants, LengthsForSale sale) {
    this.sale = sale;
    this.remnants = remnants.size();
    remnants.forEach(this::open);
  }

  private void open(long size) {
    capacity.add(size);
    load.add(0L);
  }

  /** Opens a reel, of which only later is said how large it has to be. */
  int openReel() {
    open(sale.longest());
    return capacity.size() - 1;
  }

  void closeReel() {
    capacity.remove(capacity.size() - 1);
    load.remove(load.size() - 1);
  }

  int count() {
    return capacity.size();
  }

  boolean isRemnant(int bin) {
    return bin < remnants;
  }

  long room(int bin) {
    return capacity.get(bin) - load.get(bin);
  }

  long load(int bin) {
    return load.get(bin);
  }

  void put(int bin, long piece) {
    if (bin == LengthsForSale.BY_LENGTH) {
      byLength += piece;
    } else {
      load.set(bin, load.get(bin) + piece);
    }
  }

  void take(int bin, long piece) {
    put(bin, -piece);
  }

  /** What has to be bought. */
  long bought() {
    long sum = sale.byLength(byLength);
    for (int bin = remnants; bin < count(); bin++) {
      sum += sale.reel(load(bin));
    }
    return sum;
  }

  /** How many reels and lengths are bought. */
  int packs() {
    return count() - remnants + (byLength > 0 ? 1 : 0);
  }
}
