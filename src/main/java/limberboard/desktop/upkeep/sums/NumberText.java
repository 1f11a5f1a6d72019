package limberboard.desktop.upkeep.sums;

import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.QuantityText;

/** Reads a number beside a unit that is chosen, or a number with a unit of its own. */
final class NumberText {
  private static final Pattern PLAIN = Pattern.compile("-?\\d*\\.?\\d+");
  private static final Pattern COMMA = Pattern.compile("-?\\d*,\\d+");
  private static final Pattern CLOSE = Pattern.compile("(-?[\\d.]*\\d)([A-Za-z°%].*)");

  private NumberText() {}

  /**
   * What was read.
   *
   * @param quantity the quantity, unless it is wrong
   * @param wrong what is wrong, or empty
   */
  record Read(Optional<Quantity<?>> quantity, String wrong) {}

  /** Reads what was typed; anything that is no number says what would be. */
  static Read read(String typed, KnownUnit unit) {
    String text = typed.strip();
    if (COMMA.matcher(text).matches()) {
      return wrong("Write " + text.replace(',', '.') + ", with a point.");
    }
    try {
      return new Read(Optional.of(QuantityText.parse(whole(text, unit))), "");
    } catch (IllegalArgumentException e) {
      return wrong(
          PLAIN.matcher(text).matches() && text.startsWith("-")
              ? "This cannot be below nought."
              : "This is no number; write one such as 20 or 2.5.");
    }
  }

  private static String whole(String text, KnownUnit unit) {
    if (PLAIN.matcher(text).matches()) {
      String number = text.replaceFirst("^(-?)\\.", "$10.");
      return unit == KnownUnit.PIECES ? number : number + " " + unit.symbol();
    }
    return CLOSE.matcher(text).replaceFirst("$1 $2");
  }

  private static Read wrong(String words) {
    return new Read(Optional.empty(), words);
  }
}
