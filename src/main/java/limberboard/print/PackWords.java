package limberboard.print;

import java.util.stream.Collectors;
import limberboard.library.Material.Pack;
import limberboard.workings.Purchase;
import limberboard.workings.QuantityWords;

/** Packs in words: {@code 1 cartridge of 290 ml}. Immutable. */
final class PackWords {
  private static final String EACH = "each";

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
    return pack.name().startsWith(EACH)
        ? count + pack.name().substring(EACH.length())
        : count + " × " + named(pack);
  }

  /** A pack with its size, unless its name already says it or it is one piece. */
  String named(Pack pack) {
    String size = quantities.written(pack.holds().quantity());
    String bare = QuantityWords.METRIC.written(pack.holds().quantity());
    if (bare.equals("1") || pack.name().contains(bare)) {
      return pack.name();
    }
    boolean pieces = bare.chars().allMatch(Character::isDigit);
    return pieces ? pack.name() + " (" + bare + " pieces)" : pack.name() + " of " + size;
  }
}
