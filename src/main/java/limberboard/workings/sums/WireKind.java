package limberboard.workings.sums;

import java.util.Arrays;

/**
 * Constructions of standing rigging. The modulus goes with the whole circle of the diameter, as
 * rigging tables give it: 1x19 107 and compacted strand 133 kN/mm² from published tables; rod, 7x7
 * and 7x19 and all breaking stresses from memory.
 */
enum WireKind {
  /** One strand of 19 wires. */
  ONE_BY_19("strand", "1x19 strand", 107_000, 960),
  /** One strand of shaped wires. */
  COMPACT("compacted", "compacted strand", 133_000, 1150),
  /** Solid rod. */
  ROD("rod", "solid rod", 190_000, 1300),
  /** Seven strands of seven wires. */
  SEVEN_BY_7("rope-7x7", "7x7 rope", 57_000, 800),
  /** Seven strands of 19 wires. */
  SEVEN_BY_19("rope-7x19", "7x19 rope", 47_500, 720);

  private final String word;
  private final String title;
  private final double modulus;
  private final double breaking;

  WireKind(String word, String title, double modulus, double breaking) {
    this.word = word;
    this.title = title;
    this.modulus = modulus;
    this.breaking = breaking;
  }

  static WireKind of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst().orElseThrow();
  }

  String word() {
    return word;
  }

  String title() {
    return title;
  }

  /** Modulus over the whole circle, N/mm². */
  double modulus() {
    return modulus;
  }

  /** Breaking stress over the whole circle, N/mm²: an estimate. */
  double breaking() {
    return breaking;
  }
}
