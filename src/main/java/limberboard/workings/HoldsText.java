package limberboard.workings;

import limberboard.library.page.Material.Pack;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;

/** Says how far a pack goes: {@code a 290 ml cartridge holds 40 of these}. */
final class HoldsText {
  private static final double HAIR = 1e-9;

  private final QuantityWords text;

  HoldsText(QuantityWords text) {
    this.text = text;
  }

  /**
   * How many times the amount is in the pack, where one pack is enough at least twice over; nothing
   * where pieces are counted, since everybody can see that.
   */
  String of(Purchase purchase, double needed, CountingUnit unit) {
    Pack pack = purchase.packs().get(0).pack();
    double holds = KnownUnit.counting(unit).of(pack.holds().quantity()).orElse(0);
    long times = (long) Math.floor(holds / needed + HAIR);
    return unit == CountingUnit.PIECE || purchase.count() > 1 || times < 2
        ? ""
        : "a " + named(pack) + " holds " + times + " of these";
  }

  /** The pack with its size, unless its name already says it. */
  private String named(Pack pack) {
    String size = QuantityWords.METRIC.written(pack.holds().quantity());
    return pack.name().contains(size)
        ? pack.name()
        : text.written(pack.holds().quantity()) + " " + pack.name();
  }
}
