package limberboard.upkeep.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads hours as people write them: {@code 16}, {@code 5.5}, {@code 5,5}, {@code 5:30}. */
public final class HoursText {
  private static final Pattern DECIMAL = Pattern.compile("(\\d{1,5}(?:[.,]\\d{1,4})?)");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,5}):([0-5]\\d)");
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);

  private HoursText() {}

  /** Minutes, rounded to whole ones and more than 0; empty for anything else. */
  public static Optional<Integer> minutes(String text) {
    String plain = text.strip().replaceFirst("\\s*(h|hours?)$", "");
    Matcher clock = CLOCK.matcher(plain);
    Matcher decimal = DECIMAL.matcher(plain);
    if (clock.matches()) {
      int hours = Integer.parseInt(clock.group(1));
      return positive(hours * HOUR.intValue() + Integer.parseInt(clock.group(2)));
    } else if (decimal.matches()) {
      BigDecimal hours = new BigDecimal(decimal.group(1).replace(',', '.'));
      return positive(hours.multiply(HOUR).setScale(0, RoundingMode.HALF_UP).intValueExact());
    }
    return Optional.empty();
  }

  private static Optional<Integer> positive(int minutes) {
    return minutes > 0 ? Optional.of(minutes) : Optional.empty();
  }
}
