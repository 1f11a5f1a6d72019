package limberboard.workings.sums;

import java.util.Locale;

/**
 * Kinds of house battery. Peukert exponents: the middle of published ranges (flooded 1.2 to 1.6
 * with 1.25 for many, gel 1.1 to 1.25, AGM 1.05 to 1.15), lithium from memory. Shares to use and
 * the loss by cold: common practice, no source.
 */
enum BatteryKind {
  /** Absorbent glass mat. */
  AGM("AGM lead battery", 1.10, 50, 0.8),
  /** Gel. */
  GEL("gel lead battery", 1.15, 50, 0.8),
  /** Flooded. */
  FLOODED("flooded lead battery", 1.25, 50, 0.8),
  /** Lithium iron phosphate. */
  LITHIUM("lithium iron phosphate battery", 1.03, 80, 0.4);

  private static final double FULL_AT = 25;

  private final String title;
  private final double peukert;
  private final double usable;
  private final double lossADegree;

  BatteryKind(String title, double peukert, double usable, double lossADegree) {
    this.title = title;
    this.peukert = peukert;
    this.usable = usable;
    this.lossADegree = lossADegree;
  }

  String title() {
    return title;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static BatteryKind of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** Peukert's exponent. */
  double peukert() {
    return peukert;
  }

  /** What may be taken out, %. */
  double usable() {
    return usable;
  }

  /** What is left of the capacity at a temperature, 0 to 1. */
  double leftAt(double celsius) {
    double cold = Math.max(0, FULL_AT - celsius);
    return Math.max(0.1, 1 - lossADegree / 100 * cold);
  }
}
