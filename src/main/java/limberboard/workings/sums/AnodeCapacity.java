package limberboard.workings.sums;

import java.util.Locale;
import java.util.Optional;
import limberboard.library.value.Water;

/**
 * What anodes are made of, with what a kilogram of it gives. Aluminium and zinc: DNV-RP-B401, Table
 * 10-6. Magnesium: half of what Faraday's law gives, since it spends as much on itself (from
 * memory).
 */
enum AnodeCapacity {
  /** Aluminium, zinc and indium. */
  ALUMINIUM(2000),
  /** Zinc. */
  ZINC(780),
  /** Magnesium. */
  MAGNESIUM(1100);

  private final double ampereHoursAKilogram;

  AnodeCapacity(double ampereHoursAKilogram) {
    this.ampereHoursAKilogram = ampereHoursAKilogram;
  }

  double ampereHoursAKilogram() {
    return ampereHoursAKilogram;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static AnodeCapacity of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** The alloy for a water. */
  static AnodeCapacity usualIn(Water water) {
    return water == Water.FRESH ? MAGNESIUM : ALUMINIUM;
  }

  /** Why this alloy is wrong in this water. */
  Optional<String> against(Water water) {
    return switch (this) {
      case MAGNESIUM ->
          water == Water.FRESH
              ? Optional.empty()
              : Optional.of(
                  "Magnesium is for fresh water only. In "
                      + water.spoken()
                      + " water it is gone within weeks and can lift the paint and harm aluminium"
                      + " drives.");
      case ZINC ->
          water == Water.SALT
              ? Optional.empty()
              : Optional.of(
                  "Zinc grows a crust in "
                      + water.spoken()
                      + " water and stops working, whatever is left of it. Use "
                      + usualIn(water).word()
                      + ".");
      case ALUMINIUM ->
          water == Water.FRESH
              ? Optional.of(
                  "Aluminium gives too little in fresh water, which conducts badly. Use magnesium.")
              : Optional.empty();
    };
  }
}
