package limberboard.print;

import java.util.stream.Collectors;
import limberboard.library.Material.Pack;
import limberboard.workings.Purchase;
import limberboard.workings.QuantityWords;

/** Packs in words: {@code 1 cartridge of 290 ml}. Immutable. */
final class PackWords {
  private final QuantityWords quantities;

  PackWords(QuantityWords quantities) {
    this.quantities = quantities;
  }

  /** What to buy. */
  String of(Purchase purchase) {
    return purchase.packs().stream()
        .map(counted -> of(counted.count(), counted.pack()))
        .collect(Collectors.joining(" and "));
  }

  private String of(int count, Pack pack) {
    return isSingle(pack) ? Integer.toString(count) : count + " × " + named(pack);
  }

  /** A pack with its size, unless its name already says it. */
  String named(Pack pack) {
    if (isSingle(pack)) {
      return "single pieces";
    }
    String bare = QuantityWords.METRIC.written(pack.holds().quantity());
    return pack.name().contains(bare)
        ? pack.name()
        : pack.name() + " of " + quantities.written(pack.holds().quantity());
  }

  /** Whether it is one piece, sold as it is. */
  private static boolean isSingle(Pack pack) {
    return QuantityWords.METRIC.written(pack.holds().quantity()).equals("1");
  }
}
