package limberboard.proofread.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.value.NumberWords;

/**
 * A figure with its unit in a sentence, also in words: <i>five minutes</i>, <i>24 h</i>, <i>0.6 to
 * 0.9 mm</i>.
 *
 * @param least the least it says, in the measure's own unit
 * @param most the most it says, the same as the least where it is one figure
 * @param measure what is measured
 * @param written as it is written
 * @param at where it begins, in characters of the sentence
 */
public record Figure(double least, double most, Measure measure, String written, int at) {
  private static final String NUMBER = "(" + NumberWords.PATTERN + ")";
  private static final Pattern FIGURE =
      Pattern.compile(
          NUMBER
              + "(?:\\s*(?:to|–|-|or|and)\\s*"
              + NUMBER
              + ")?[ -]?(N·m|N/mm²|kN|N|kg|mA|A|V|bar|mbar|mm|cm|m|°C|%|g a litre|ml a litre|min"
              + "|minutes?|seconds?|s|h|hours?|days?|weeks?|turns?|of a turn)(?![\\p{L}²·/])");

  private record Unit(Measure measure, double factor) {}

  private static final Map<String, Unit> UNITS = units();

  private static Map<String, Unit> units() {
    Map<String, Unit> units = new HashMap<>();
    put(units, Measure.TORQUE, 1, "N·m");
    put(units, Measure.PULL, 1, "N");
    put(units, Measure.PULL, 1000, "kN");
    put(units, Measure.PULL, 10, "kg");
    put(units, Measure.CURRENT, 1, "mA");
    put(units, Measure.CURRENT, 1000, "A");
    put(units, Measure.VOLTAGE, 1, "V");
    put(units, Measure.PRESSURE, 1, "bar");
    put(units, Measure.PRESSURE, 0.001, "mbar");
    put(units, Measure.LENGTH, 1, "mm");
    put(units, Measure.LENGTH, 10, "cm");
    put(units, Measure.LENGTH, 1000, "m");
    put(units, Measure.TEMPERATURE, 1, "°C");
    put(units, Measure.SHARE, 1, "%");
    put(units, Measure.DILUTION, 1, "g a litre", "ml a litre");
    put(units, Measure.TIME, 1, "min", "minute");
    put(units, Measure.TIME, 1 / 60.0, "s", "second");
    put(units, Measure.TIME, 60, "h", "hour");
    put(units, Measure.TIME, 60 * 24, "day");
    put(units, Measure.TIME, 60 * 24 * 7, "week");
    put(units, Measure.TURNS, 1, "turn", "of a turn");
    return units;
  }

  private static void put(Map<String, Unit> units, Measure measure, double factor, String... as) {
    for (String name : as) {
      units.put(name, new Unit(measure, factor));
    }
  }

  /** The figures of a sentence, in its order. */
  public static List<Figure> in(Sentence sentence) {
    List<Figure> figures = new ArrayList<>();
    Matcher found = FIGURE.matcher(sentence.text());
    while (found.find()) {
      String name = found.group(3);
      Unit unit = UNITS.get(UNITS.containsKey(name) ? name : name.replaceAll("s$", ""));
      boolean ordinal = found.group().matches("(a|one) second");
      if (unit != null && !ordinal) {
        double first = NumberWords.of(found.group(1));
        double second = found.group(2) == null ? first : NumberWords.of(found.group(2));
        figures.add(
            new Figure(
                Math.min(first, second) * unit.factor(),
                Math.max(first, second) * unit.factor(),
                unit.measure(),
                found.group().strip(),
                found.start()));
      }
    }
    return figures;
  }

  /**
   * Whether two figures say different things.
   *
   * @param slack how much more one may be than the other: 1.2 for a fifth
   */
  public boolean differsFrom(Figure other, double slack) {
    return measure == other.measure && (least > other.most * slack || other.least > most * slack);
  }
}
