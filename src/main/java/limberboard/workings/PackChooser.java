package limberboard.workings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.page.Material.Pack;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.workings.Purchase.Counted;

/**
 * Chooses the packs to buy: the least left over among all purchases of at most two sizes and at
 * most four packs more than the fewest that do; between equals, the fewer packs, and then the size
 * that the page names first. The allowance of four keeps a list from asking for thirty small tubes
 * instead of two cartridges. Immutable.
 */
public final class PackChooser {
  private static final int EXTRA = 4;
  private static final int MOST = 1000;
  private static final double HAIR = 1e-9;

  private record Sized(Pack pack, double holds) {}

  private final List<Sized> sizes = new ArrayList<>();

  /** Packs that hold nothing, or something in another dimension than the unit, are passed over. */
  public PackChooser(List<Pack> packs, CountingUnit unit) {
    for (Pack pack : packs) {
      OptionalDouble holds = KnownUnit.counting(unit).of(pack.holds().quantity());
      if (holds.isPresent() && holds.getAsDouble() > 0) {
        sizes.add(new Sized(pack, holds.getAsDouble()));
      }
    }
  }

  /** The packs for so much; empty when there are no packs or nothing is needed. */
  public Optional<Purchase> choose(double needed) {
    if (sizes.isEmpty() || !(needed > 0) || Double.isInfinite(needed)) {
      return Optional.empty();
    }
    Sized largest = sizes.stream().max(Comparator.comparingDouble(Sized::holds)).orElseThrow();
    double fewest = count(needed, largest);
    if (fewest > MOST) {
      return Optional.of(purchase(needed, (int) Math.min(fewest, Integer.MAX_VALUE), largest));
    }
    return candidates(needed, (int) fewest + EXTRA).stream()
        .min(
            Comparator.comparingDouble((Purchase bought) -> Math.rint(bought.leftOver() / HAIR))
                .thenComparingInt(Purchase::count));
  }

  private List<Purchase> candidates(double needed, int most) {
    List<Purchase> candidates = new ArrayList<>();
    for (Sized first : sizes) {
      double alone = count(needed, first);
      if (alone <= most) {
        candidates.add(purchase(needed, (int) alone, first));
      }
      for (Sized second : sizes) {
        for (int i = 1; second != first && i < Math.min(alone, most); i++) {
          double rest = count(needed - i * first.holds(), second);
          if (rest >= 1 && i + rest <= most) {
            candidates.add(purchase(needed, i, first, (int) rest, second));
          }
        }
      }
    }
    return candidates;
  }

  private static double count(double needed, Sized size) {
    return Math.ceil(needed / size.holds() - HAIR);
  }

  private static Purchase purchase(double needed, int count, Sized size) {
    double leftOver = Math.max(0, count * size.holds() - needed);
    return new Purchase(List.of(new Counted(count, size.pack())), leftOver);
  }

  private static Purchase purchase(double needed, int i, Sized first, int j, Sized second) {
    double leftOver = Math.max(0, i * first.holds() + j * second.holds() - needed);
    return new Purchase(
        List.of(new Counted(i, first.pack()), new Counted(j, second.pack())), leftOver);
  }
}
