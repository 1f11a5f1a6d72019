package limberboard.workings.sums;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.value.KnownUnit;
import limberboard.workings.QuantityWords;

/**
 * What a sum says to its inputs. Built line by line, each call giving a new answer.
 *
 * @param results the results, the most important first
 * @param working the working with the numbers in it, line by line
 * @param warnings where the result does not apply, or what it must not be used for
 */
public record Answer(List<Result> results, List<String> working, List<String> warnings) {
  /** Copies the lists. */
  public Answer {
    results = List.copyOf(results);
    working = List.copyOf(working);
    warnings = List.copyOf(warnings);
  }

  /** An answer with nothing in it yet. */
  public static Answer empty() {
    return new Answer(List.of(), List.of(), List.of());
  }

  /** With a further line of working. */
  public Answer working(String line) {
    return new Answer(results, with(working, line), warnings);
  }

  /** With a further result. */
  public Answer result(String id, String title, double value, KnownUnit unit) {
    return result(
        Double.isFinite(value)
            ? new Result.Reckoned(id, title, unit.quantity(value))
            : new Result.Beyond(id, title));
  }

  /** With a further result in words. */
  public Answer said(String id, String title, String text) {
    return result(new Result.Said(id, title, text));
  }

  /** With a warning, where it is due. */
  public Answer warnIf(boolean due, String warning) {
    return due ? new Answer(results, working, with(warnings, warning)) : this;
  }

  /** A value with its unit, to three figures, as it stands in a line of working. */
  public static String say(double value, KnownUnit unit) {
    return Double.isFinite(value)
        ? QuantityWords.METRIC.rounded(unit.quantity(value))
        : Double.toString(value);
  }

  /** A number without a unit, to three figures. */
  public static String say(double value) {
    return say(value, KnownUnit.PIECES);
  }

  private Answer result(Result result) {
    return new Answer(with(results, result), working, warnings);
  }

  private static <T> List<T> with(List<T> list, T further) {
    List<T> longer = new ArrayList<>(list);
    longer.add(further);
    return longer;
  }
}
