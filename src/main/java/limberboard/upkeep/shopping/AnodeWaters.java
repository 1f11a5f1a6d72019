package limberboard.upkeep.shopping;

import java.util.Optional;
import limberboard.library.value.AnodeAlloy;
import limberboard.library.value.Water;
import limberboard.upkeep.shopping.MixWarning.Grade;

/** Which anode alloy is wrong in which water. Common practice, no source. */
final class AnodeWaters {

  /**
   * What is wrong.
   *
   * @param grade how bad it is
   * @param why what happens
   */
  record Wrong(Grade grade, String why) {}

  private AnodeWaters() {}

  /** What speaks against an alloy in a water; empty when nothing does. */
  static Optional<Wrong> wrong(AnodeAlloy alloy, Water water) {
    return switch (alloy) {
      case ZINC -> zinc(water);
      case MAGNESIUM -> magnesium(water);
      case ALUMINIUM ->
          water == Water.FRESH
              ? care(
                  "its oxide skin may stop it in fresh water; magnesium is the usual choice there")
              : Optional.empty();
    };
  }

  private static Optional<Wrong> zinc(Water water) {
    return switch (water) {
      case SALT -> Optional.empty();
      case BRACKISH -> care("zinc crusts over slowly in brackish water; take aluminium");
      case FRESH ->
          never(
              "zinc crusts over in fresh water within weeks and then protects nothing; take"
                  + " magnesium");
    };
  }

  private static Optional<Wrong> magnesium(Water water) {
    String gone =
        "magnesium is used up within weeks and drives the voltage so high that paint lifts";
    return switch (water) {
      case SALT -> never(gone + " and aluminium is attacked; take aluminium or zinc");
      case BRACKISH -> never(gone + ", only more slowly than in the sea; take aluminium");
      case FRESH -> Optional.empty();
    };
  }

  private static Optional<Wrong> never(String why) {
    return Optional.of(new Wrong(Grade.NEVER, why));
  }

  private static Optional<Wrong> care(String why) {
    return Optional.of(new Wrong(Grade.TAKE_CARE, why));
  }
}
