package limberboard.print.type;

import java.util.regex.Pattern;

/** Keeps what belongs together on one line: a number and its unit. */
public final class Typography {
  private static final char NO_BREAK = '\u00A0';
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile(
          "(?<=[0-9½])"
              + " (?=(?:mm²?|cm²?|m²?|ml|l|kg|g|kN|N·m|N|min|h|V|A|°C|%|litres?)(?![\\p{L}]))");
  private static final Pattern TIMES = Pattern.compile("(?<=[0-9]) (?=× [0-9])");

  private Typography() {}

  /** The text with spaces that no line may break at. */
  public static String joined(String text) {
    String units = NUMBER_AND_UNIT.matcher(text).replaceAll(String.valueOf(NO_BREAK));
    return TIMES.matcher(units).replaceAll(String.valueOf(NO_BREAK));
  }
}
