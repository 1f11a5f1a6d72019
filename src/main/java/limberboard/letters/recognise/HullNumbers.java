package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.boat.Boat;

/**
 * The hull numbers that a letter says.
 *
 * @param surely numbers that are called hull numbers
 * @param likely numbers that are called numbers, or stand as hull numbers do
 * @param lettered numbers behind one capital letter, such as G112, with the letter
 */
record HullNumbers(Set<Integer> surely, Set<Integer> likely, List<String> lettered) {
  private static final String NO_AMOUNT =
      "(?![.,:]?\\d|\\s*(?:%|mm\\b|cm\\b|m\\b|ft\\b|foot\\b|feet\\b|kg\\b|l\\b|litres?\\b|years?\\b"
          + "|days?\\b|hours?\\b|weeks?\\b|minutes?\\b|months?\\b|times\\b|knots?\\b|miles?\\b"
          + "|of\\b|per\\b|and\\b|on the next\\b|next to\\b|beside\\b|opposite\\b|had the same\\b"
          + "|has the same\\b))";
  private static final String NO_OTHER_NUMBER =
      "|(?<!\\b(?:customer|invoice|order|phone|telephone|account|berth|box|mooring|buoy|item|part"
          + "|member|membership|policy|case|house|room|page|channel|ticket|reference)\\s)";
  private static final Pattern HULL =
      Pattern.compile(
          "(?i)\\bhull\\s*(?:no\\b\\.?|number|nr\\b\\.?|#|:|is|was)*\\s*(\\d{1,4})\\b" + NO_AMOUNT);
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?i)(?:\\b(?:build|building|sail|boat|yard)(?:\\s+(?:no\\b\\.?|number|nr\\b\\.?))?"
              + NO_OTHER_NUMBER
              + "\\b(?:no\\b\\.?|number|nr\\b\\.?)|#|\\bt?\\d\\d\\s*/)\\s*[:#]?\\s*(\\d{1,4})\\b"
              + NO_AMOUNT);
  private static final Pattern FIRST =
      Pattern.compile(
          "\\A\\s*(\\d{2,3})(?=[!,.:\\s]\\s*(?:[-–&]\\s*)?\\p{L}|\\s*$)"
              + NO_AMOUNT.replace("|and\\b", ""),
          Pattern.MULTILINE);
  private static final Pattern LETTERED = Pattern.compile("\\b(\\p{Lu})[\\s-]?(\\d{2,4})\\b");

  HullNumbers {
    surely = Set.copyOf(surely);
    likely = Set.copyOf(likely);
    lettered = List.copyOf(lettered);
  }

  static HullNumbers in(String text) {
    List<String> lettered = new ArrayList<>();
    Matcher matcher = LETTERED.matcher(text);
    while (matcher.find()) {
      lettered.add(matcher.group(1) + matcher.group(2));
    }
    Set<Integer> likely = numbers(NUMBER, text);
    if (likely.isEmpty()) {
      likely = numbers(FIRST, text);
    }
    return new HullNumbers(numbers(HULL, text), likely, lettered);
  }

  private static Set<Integer> numbers(Pattern pattern, String text) {
    Set<Integer> all = new LinkedHashSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      all.add(Integer.parseInt(matcher.group(1)));
    }
    return all;
  }

  /** Whether any number is said to be one. */
  boolean isEmpty() {
    return surely.isEmpty() && likely.isEmpty();
  }

  /** Whether a boat's number is said. */
  boolean says(Boat boat) {
    return surely.contains(boat.hull())
        || likely.contains(boat.hull())
        || lettered.contains(boat.name().substring(0, 1) + boat.hull());
  }

  /** Whether what is called a hull number says that she is another boat. */
  boolean contradicts(Boat boat) {
    return !surely.isEmpty() && !surely.contains(boat.hull());
  }
}
