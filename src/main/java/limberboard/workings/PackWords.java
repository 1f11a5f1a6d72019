package limberboard.workings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import limberboard.library.page.Material.Pack;
import limberboard.workings.Purchase.Counted;

/** Packs in words: {@code 1 cartridge of 290 ml}. Immutable. */
public final class PackWords {
  private static final String EACH = "each";

  private final QuantityWords quantities;

  /** Packs whose sizes are written so. */
  public PackWords(QuantityWords quantities) {
    this.quantities = quantities;
  }

  /** What to buy. */
  public String of(Purchase purchase) {
    return of(purchase.packs());
  }

  /** What to buy, sorted together by size. */
  public String of(List<Counted> packs) {
    Map<Pack, Integer> together = new LinkedHashMap<>();
    packs.forEach(counted -> together.merge(counted.pack(), counted.count(), Integer::sum));
    return together.entrySet().stream()
        .map(counted -> of(counted.getValue(), counted.getKey()))
        .collect(Collectors.joining(" and "));
  }

  private String of(int count, Pack pack) {
    if (pack.cutToLength()) {
      double one = pack.holds().quantity().getValue().doubleValue();
      return QuantityWords.plain(count * one) + " m " + pack.name();
    }
    return pack.name().startsWith(EACH)
        ? count + pack.name().substring(EACH.length())
        : count + " × " + named(pack);
  }

  /** A pack with its size, unless its name already says it or it is one piece. */
  public String named(Pack pack) {
    String size = quantities.written(pack.holds().quantity());
    String bare = QuantityWords.METRIC.written(pack.holds().quantity());
    if (bare.equals("1") || pack.name().contains(bare)) {
      return pack.name();
    }
    boolean pieces = bare.chars().allMatch(Character::isDigit);
    return pieces ? pack.name() + " (" + bare + " pieces)" : pack.name() + " of " + size;
  }
}
