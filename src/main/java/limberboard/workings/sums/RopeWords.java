package limberboard.workings.sums;

import java.util.Arrays;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;

/** The words of rope that sums are given. */
final class RopeWords {
  private RopeWords() {}

  /** The construction put in as {@code rope}. */
  static RopeConstruction rope(CheckedInputs given) {
    return Arrays.stream(RopeConstruction.values())
        .filter(each -> each.word().equals(given.word("rope")))
        .findFirst()
        .orElseThrow();
  }

  /** The end put in as {@code end}. */
  static RopeEnd end(CheckedInputs given) {
    return Arrays.stream(RopeEnd.values())
        .filter(each -> each.word().equals(given.word("end")))
        .findFirst()
        .orElseThrow();
  }
}
