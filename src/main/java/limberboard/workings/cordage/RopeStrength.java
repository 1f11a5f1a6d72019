package limberboard.workings.cordage;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;

/**
 * What ropes carry.
 *
 * <p>A new rope breaks at about c·d², d in millimetres. Polyester, braid on braid: c = 0.20 kN/mm²,
 * the figure that EN 564 asks of accessory cord (from memory). Three-strand polyester 0.135, below
 * BS 4928 and the weaker inch sizes of handbooks; three-strand polyamide 0.20, below BS 4928 (from
 * memory). HMPE, bare 0.80 and under a cover 0.40: the lower end of what shops give, from memory;
 * grades differ by half as much again, so the label counts.
 */
public final class RopeStrength {
  /** What is asked of a rope beyond its load once its losses are taken off. */
  public static final double SAFETY = 3;

  /** The part of its strength that a rope keeps over its years of sun, salt and chafe. */
  public static final double AGE_KEEPS = 0.75;

  /** The part of its strength that a rope keeps in a knot; tests find 0.5 to 0.8, HMPE less. */
  public static final double KNOT_KEEPS = 0.5;

  /** The part of its strength that a rope keeps in an eye splice. */
  public static final double SPLICE_KEEPS = 0.9;

  private static final double POLYESTER_BRAID = 200;
  private static final double HMPE_CORE = 400;
  private static final double HMPE_PLAIN = 800;
  private static final double POLYESTER_LAID = 135;
  private static final double POLYAMIDE_LAID = 200;
  private static final double HAIR = 1e-9;

  private RopeStrength() {}

  /**
   * The load at which a new rope breaks, in newtons.
   *
   * @param millimetres diameter, 0 or more
   */
  public static double breaking(RopeConstruction construction, double millimetres) {
    double newtonsPerSquare =
        switch (construction) {
          case POLYESTER_BRAID -> POLYESTER_BRAID;
          case HMPE_CORE -> HMPE_CORE;
          case HMPE_PLAIN -> HMPE_PLAIN;
          case POLYESTER_LAID -> POLYESTER_LAID;
          case POLYAMIDE_LAID -> POLYAMIDE_LAID;
        };
    return newtonsPerSquare * millimetres * millimetres;
  }

  /** The part of its strength that an end leaves a rope, 0 to 1. */
  public static double keeps(RopeEnd end) {
    return switch (end) {
      case KNOT -> KNOT_KEEPS;
      case EYE_SPLICE -> SPLICE_KEEPS;
      case WHIPPING -> 1;
    };
  }

  /** The end that weakens a rope most; a rope without ends on record counts as whipped. */
  public static RopeEnd weakest(Collection<RopeEnd> ends) {
    return ends.stream()
        .min(Comparator.comparingDouble(RopeStrength::keeps))
        .orElse(RopeEnd.WHIPPING);
  }

  /**
   * What a new rope has to break at: load × safety ÷ (end × age).
   *
   * @param load in newtons
   * @return in newtons
   */
  public static double needed(double load, RopeEnd weakest) {
    return load * SAFETY / (keeps(weakest) * AGE_KEEPS);
  }

  /** Diameters that chandlers stock, in millimetres, thinnest first. */
  public static List<Double> stocked(RopeConstruction construction) {
    return switch (construction) {
      case POLYESTER_BRAID -> List.of(4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0);
      case HMPE_CORE -> List.of(5.0, 6.0, 8.0, 10.0, 12.0, 14.0);
      case HMPE_PLAIN -> List.of(1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0);
      case POLYESTER_LAID, POLYAMIDE_LAID ->
          List.of(6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 24.0);
    };
  }

  /**
   * The thinnest stocked rope that breaks at no less than this.
   *
   * @param newtons what it has to break at
   * @return its diameter in millimetres; empty when none stocked is thick enough
   */
  public static OptionalDouble thinnest(RopeConstruction construction, double newtons) {
    return stocked(construction).stream()
        .filter(millimetres -> breaking(construction, millimetres) >= newtons - HAIR)
        .mapToDouble(Double::doubleValue)
        .findFirst();
  }

  /**
   * The thinnest stocked rope of at least this diameter.
   *
   * @return its diameter in millimetres; empty when none stocked is thick enough
   */
  public static OptionalDouble thinnestFrom(RopeConstruction construction, double millimetres) {
    return stocked(construction).stream()
        .filter(stocked -> stocked >= millimetres - HAIR)
        .mapToDouble(Double::doubleValue)
        .findFirst();
  }
}
