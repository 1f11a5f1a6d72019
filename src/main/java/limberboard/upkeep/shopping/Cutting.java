package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.CountingUnit;
import limberboard.library.KnownUnit;
import limberboard.library.Material.Pack;
import limberboard.workings.Purchase;
import limberboard.workings.Purchase.Counted;
import limberboard.workings.QuantityWords;

/**
 * Plans from which remnant, reel or length each piece is cut. Remnants are used where that saves
 * buying; with them never more is bought than without.
 */
final class Cutting {
  private final List<Pack> reels = new ArrayList<>();
  private final Optional<Pack> byLength;
  private final LengthsForSale sale;

  /** Cutting of what is sold in these packs, in metres. */
  Cutting(List<Pack> packs) {
    List<Pack> usable = packs.stream().filter(pack -> length(pack) > 0).toList();
    usable.stream().filter(pack -> !pack.cutToLength()).forEach(reels::add);
    byLength =
        usable.stream().filter(Pack::cutToLength).min(Comparator.comparingLong(Cutting::length));
    sale =
        new LengthsForSale(
            reels.stream().mapToLong(Cutting::length).toArray(),
            byLength.map(Cutting::length).orElse(0L));
  }

  private static long length(Pack pack) {
    return Lengths.available(
        KnownUnit.counting(CountingUnit.M).of(pack.holds().quantity()).orElse(0));
  }

  /**
   * The plan.
   *
   * @param pieces lengths in metres, each more than 0
   * @param remnants lengths in metres
   */
  CuttingPlan plan(List<Double> pieces, List<Double> remnants) {
    List<Long> there = remnants.stream().map(Lengths::available).filter(left -> left > 0).toList();
    long longest = there.stream().mapToLong(Long::longValue).max().orElse(0);
    long most = sale.step() > 0 ? Long.MAX_VALUE : Math.max(longest, sale.longest());
    List<Long> wanted = new ArrayList<>();
    List<Double> tooLong = new ArrayList<>();
    for (double piece : pieces) {
      if (Lengths.needed(piece) > most) {
        tooLong.add(piece);
      } else {
        wanted.add(Lengths.needed(piece));
      }
    }
    wanted.sort(Comparator.reverseOrder());
    return plan(wanted.stream().mapToLong(Long::longValue).toArray(), there, tooLong);
  }

  private CuttingPlan plan(long[] pieces, List<Long> remnants, List<Double> tooLong) {
    CuttingSearch search = new CuttingSearch(pieces, remnants, sale);
    int[] way = search.run();
    if (!remnants.isEmpty() && canDoWithout(pieces)) {
      CuttingSearch without = new CuttingSearch(pieces, List.of(), sale);
      int[] other = without.run();
      if (without.bought() < search.bought()) {
        return told(pieces, List.of(), other, tooLong);
      }
    }
    return told(pieces, remnants, way, tooLong);
  }

  private boolean canDoWithout(long[] pieces) {
    return pieces.length > 0 && (sale.step() > 0 || pieces[0] <= sale.longest());
  }

  private CuttingPlan told(long[] pieces, List<Long> remnants, int[] way, List<Double> tooLong) {
    Map<Integer, List<Long>> byBin = new LinkedHashMap<>();
    for (int i = 0; i < pieces.length; i++) {
      byBin.computeIfAbsent(way[i], bin -> new ArrayList<>()).add(pieces[i]);
    }
    List<Cut> cuts = new ArrayList<>();
    Map<Pack, Integer> packs = new LinkedHashMap<>();
    double over = 0;
    for (Map.Entry<Integer, List<Long>> bin : byBin.entrySet()) {
      long load = bin.getValue().stream().mapToLong(Long::longValue).sum();
      boolean remnant = bin.getKey() >= 0 && bin.getKey() < remnants.size();
      if (remnant) {
        cuts.add(cut("remnant of", true, remnants.get(bin.getKey()), bin.getValue()));
      } else if (bin.getKey() == LengthsForSale.BY_LENGTH) {
        long length = sale.byLength(load);
        packs.merge(byLength.orElseThrow(), (int) (length / sale.step()), Integer::sum);
        cuts.add(cut("bought in one length of", false, length, bin.getValue()));
        over += Lengths.metres(length - load);
      } else {
        Pack reel = reel(load);
        packs.merge(reel, 1, Integer::sum);
        cuts.add(cut(reel.name() + " of", false, length(reel), bin.getValue()));
        over += Lengths.metres(length(reel) - load);
      }
    }
    return new CuttingPlan(cuts, purchase(packs, over), tooLong);
  }

  private Pack reel(long load) {
    long size = sale.reel(load);
    return reels.stream().filter(pack -> length(pack) == size).findFirst().orElseThrow();
  }

  private static Cut cut(String from, boolean remnant, long length, List<Long> pieces) {
    double metres = Lengths.metres(length);
    String words = from + " " + QuantityWords.plain(metres) + " m";
    return new Cut(words, remnant, metres, pieces.stream().map(Lengths::metres).toList());
  }

  private static Optional<Purchase> purchase(Map<Pack, Integer> packs, double over) {
    List<Counted> counted = new ArrayList<>();
    packs.forEach((pack, count) -> counted.add(new Counted(count, pack)));
    return counted.isEmpty() ? Optional.empty() : Optional.of(new Purchase(counted, over));
  }
}
