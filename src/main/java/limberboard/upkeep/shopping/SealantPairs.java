package limberboard.upkeep.shopping;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.library.value.SealantFamily;

/** Which families of sealant spoil each other, and how. Common practice, no source. */
final class SealantPairs {
  private static final Map<Set<SealantFamily>, String> PAIRS = new LinkedHashMap<>();

  static {
    String silicone =
        "nothing sticks where silicone has been, cured or wiped off: lay the other sealant first"
            + " and on clean surfaces, or keep the two to separate joints";
    put(
        SealantFamily.POLYURETHANE,
        SealantFamily.SILICONE,
        "fresh silicone keeps polyurethane soft, and " + silicone);
    put(SealantFamily.POLYSULPHIDE, SealantFamily.SILICONE, silicone);
    put(SealantFamily.HYBRID, SealantFamily.SILICONE, silicone);
    put(
        SealantFamily.POLYURETHANE,
        SealantFamily.HYBRID,
        "while both are fresh, the alcohol that a hybrid gives off keeps polyurethane sticky: one"
            + " of the two in a joint, never both within a week");
    put(
        SealantFamily.POLYSULPHIDE,
        SealantFamily.POLYURETHANE,
        "laid against each other before they have cured, one keeps the other soft: one of the two"
            + " in a joint");
    for (SealantFamily other : EnumSet.complementOf(EnumSet.of(SealantFamily.BUTYL))) {
      put(
          SealantFamily.BUTYL,
          other,
          "butyl leaves an oily film on which no setting sealant holds: take every trace off first,"
              + " or stay with butyl");
    }
  }

  private SealantPairs() {}

  private static void put(SealantFamily one, SealantFamily other, String why) {
    PAIRS.put(EnumSet.of(one, other), why);
  }

  /** What happens when the two meet in a joint; empty for a family and itself. */
  static Optional<String> why(SealantFamily one, SealantFamily other) {
    return Optional.ofNullable(PAIRS.get(EnumSet.of(one, other)));
  }
}
