package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Material.Pack;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.workings.Purchase;
import limberboard.workings.Purchase.Counted;
import limberboard.workings.QuantityWords;

/**
 * Plans from which remnant, reel or length each piece is cut. Remnants are used where that saves
 * buying; with them never more is bought than without.
 */
final class CuttingPlans {
  private final List<Pack> reels = new ArrayList<>();
  private final Optional<Pack> byLength;
  private final LengthsForSale sale;

  /** Cutting of what is sold in these packs, in metres. */
  public CuttingPlans(List<Pack> packs) {
    List<Pack> usable = packs.stream().filter(pack -> length(pack) > 0).toList();
    usable.stream().filter(pack -> !pack.cutToLength()).forEach(reels::add);
    byLength =
        usable.stream()
            .filter(Pack::cutToLength)
            .min(Comparator.comparingLong(CuttingPlans::length));
    sale =
        new LengthsForSale(
            reels.stream().mapToLong(CuttingPlans::length).toArray(),
            byLength.map(CuttingPlans::length).orElse(0L));
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
    RemnantsOnly there = new RemnantsOnly(remnants.stream().map(Lengths::available).toList());
    List<Double> longestFirst = new ArrayList<>(pieces);
    longestFirst.sort(Comparator.reverseOrder());
    List<Long> wanted = new ArrayList<>();
    List<Double> tooLong = new ArrayList<>();
    for (double piece : longestFirst) {
      long length = Lengths.needed(piece);
      if (sale.step() > 0 || length <= sale.longest()) {
        wanted.add(length);
      } else if (!there.place(length)) {
        tooLong.add(piece);
      }
    }
    return plan(wanted.stream().mapToLong(Long::longValue).toArray(), there, tooLong);
  }

  private CuttingPlan plan(long[] pieces, RemnantsOnly remnants, List<Double> tooLong) {
    CuttingSearch search = new CuttingSearch(pieces, remnants.rooms(), sale);
    int[] way = search.run();
    CuttingSearch without = new CuttingSearch(pieces, List.of(), sale);
    int[] other = without.run();
    return without.bought() < search.bought()
        ? told(pieces, 0, other, remnants, tooLong)
        : told(pieces, remnants.rooms().size(), way, remnants, tooLong);
  }

  private CuttingPlan told(
      long[] pieces, int used, int[] way, RemnantsOnly remnants, List<Double> tooLong) {
    Map<Integer, List<Long>> byRemnant = remnants.placed();
    Map<Integer, List<Long>> byReel = new LinkedHashMap<>();
    for (int i = 0; i < pieces.length; i++) {
      boolean remnant = way[i] >= 0 && way[i] < used;
      (remnant ? byRemnant : byReel)
          .computeIfAbsent(way[i], bin -> new ArrayList<>())
          .add(pieces[i]);
    }
    List<Cut> cuts = new ArrayList<>();
    byRemnant.forEach((bin, cut) -> cuts.add(cut("remnant of", true, remnants.length(bin), cut)));
    Map<Pack, Integer> packs = new LinkedHashMap<>();
    long over = 0;
    for (Map.Entry<Integer, List<Long>> bin : byReel.entrySet()) {
      long load = bin.getValue().stream().mapToLong(Long::longValue).sum();
      Cut cut = bought(bin.getKey() == LengthsForSale.BY_LENGTH, load, bin.getValue(), packs);
      cuts.add(cut);
      over += Lengths.needed(cut.length()) - load;
    }
    return new CuttingPlan(cuts, purchase(packs, Lengths.metres(over)), tooLong);
  }

  private Cut bought(boolean toLength, long load, List<Long> pieces, Map<Pack, Integer> packs) {
    if (toLength) {
      long length = sale.byLength(load);
      packs.merge(byLength.orElseThrow(), (int) (length / sale.step()), Integer::sum);
      return cut("one length of", false, length, pieces);
    }
    Pack reel = reel(load);
    packs.merge(reel, 1, Integer::sum);
    return cut(reel.name() + " of", false, length(reel), pieces);
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
