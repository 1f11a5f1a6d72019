package limberboard.print;

import java.util.stream.Collectors;
import limberboard.library.Material.Pack;
import limberboard.workings.Purchase;
import limberboard.workings.QuantityText;

/** Packs in words: {@code 1 cartridge of 290 ml}. Immutable. */
final class PackWords {
  private final QuantityText quantities;

  PackWords(QuantityText quantities) {
    this.quantities = quantities;
  }

  /** What to buy. */
  String of(Purchase purchase) {
    return purchase.packs().stream()
        .map(counted -> counted.count() + " × " + named(counted.pack()))
        .collect(Collectors.joining(" and "));
  }

  /** A pack with its size, unless its name already says it. */
  String named(Pack pack) {
    String size = quantities.written(pack.holds().quantity());
    String bare = QuantityText.METRIC.written(pack.holds().quantity());
    return pack.name().contains(bare) ? pack.name() : pack.name() + " of " + size;
  }
}
