package limberboard.drill;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.GiveUp;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Heed;
import limberboard.drill.DrillStep.Hint;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.DrillStep.Open;
import limberboard.drill.DrillStep.Secure;

/** Reads steps as they are typed; {@link DrillStep#text} writes them. Stateless. */
public final class StepReader {
  /** What can be typed, for those who typed something else. */
  public static final String WORDS =
      "check CHECK, open ACCESS, caution CAUTION, safe CHECK, mend CAUSE PERCENT,"
          + " yard CAUSE PERCENT, hint or give-up";

  private static final Pattern SURE = Pattern.compile("(100|[0-9]{1,2}) ?%?");
  private static final int OF_TWO = 2;
  private static final int OF_THREE = 3;

  private StepReader() {}

  /**
   * Reads one step.
   *
   * @throws IllegalArgumentException when it is none; the message says what would be right
   */
  public static DrillStep read(String typed) {
    List<String> words = Arrays.asList(typed.strip().split("\\s+", OF_THREE));
    return switch (words.get(0)) {
      case "check" -> new Ask(named(words, typed));
      case "open" -> new Open(named(words, typed));
      case "caution" -> new Heed(named(words, typed));
      case "safe" -> new Secure(named(words, typed));
      case "mend" -> {
        Named mend = certain(words, typed);
        yield new Mend(mend.cause(), mend.sure());
      }
      case "yard" ->
          new HandOver(words.size() == 1 ? Optional.empty() : Optional.of(certain(words, typed)));
      case "hint" -> alone(words, typed, new Hint());
      case "give-up" -> alone(words, typed, new GiveUp());
      default -> throw unknown(typed);
    };
  }

  private static DrillStep alone(List<String> words, String typed, DrillStep step) {
    if (words.size() != 1) {
      throw unknown(typed);
    }
    return step;
  }

  private static String named(List<String> words, String typed) {
    if (words.size() != OF_TWO) {
      throw unknown(typed);
    }
    return words.get(1);
  }

  private static Named certain(List<String> words, String typed) {
    if (words.size() == OF_TWO) {
      throw new IllegalArgumentException(
          "say how sure you are that it is this, in per cent: " + typed.strip() + " 70");
    }
    if (words.size() != OF_THREE) {
      throw unknown(typed);
    }
    if (!SURE.matcher(words.get(2)).matches()) {
      throw new IllegalArgumentException(
          "\"" + words.get(2) + "\" is no whole number of per cent from 0 to 100");
    }
    return new Named(words.get(1), Integer.parseInt(words.get(2).replaceAll("[ %]", "")));
  }

  private static IllegalArgumentException unknown(String typed) {
    return new IllegalArgumentException("\"" + typed.strip() + "\" is no step; type " + WORDS);
  }
}
