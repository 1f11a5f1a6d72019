package limberboard.letters.recognise;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A logistic regression: how figures of a letter become a chance. Immutable.
 *
 * @param values the constant, then one value for each figure
 */
record Coefficients(List<Double> values) {
  /** Coefficients that say nothing. */
  static final Coefficients NONE = new Coefficients(List.of(0.0));

  private static final int ROUNDS = 1500;
  private static final double STEP = 0.3;
  private static final double RIDGE = 0.002;

  Coefficients {
    values = List.copyOf(values);
  }

  /** Reads them from a line of the list that comes with the program. */
  static Coefficients named(String name) {
    return WordList.lines("coefficients.txt").stream()
        .filter(line -> line.startsWith(name + ":"))
        .map(line -> line.substring(name.length() + 1).strip().split("\\s+"))
        .map(all -> new Coefficients(Arrays.stream(all).map(Double::valueOf).toList()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no coefficients for " + name));
  }

  /** The chance, 0 to 1. */
  double chance(double[] figures) {
    double sum = values.get(0);
    for (int i = 0; i + 1 < values.size(); i++) {
      sum += values.get(i + 1) * figures[i];
    }
    return Odds.chance(sum);
  }

  /** A row to learn from. */
  record Row(double[] figures, boolean so) {}

  /** The likeliest values for rows, with a small penalty for large ones. */
  static Coefficients learnt(List<Row> rows) {
    int n = rows.get(0).figures().length;
    double[] means = new double[n];
    double[] spreads = new double[n];
    for (int i = 0; i < n; i++) {
      int at = i;
      means[i] = rows.stream().mapToDouble(row -> row.figures()[at]).average().orElse(0);
      double mean = means[i];
      double variance =
          rows.stream()
              .mapToDouble(row -> Math.pow(row.figures()[at] - mean, 2))
              .average()
              .orElse(0);
      spreads[i] = Math.max(1e-6, Math.sqrt(variance));
    }
    double[] now = new double[n + 1];
    for (int round = 0; round < ROUNDS; round++) {
      double[] slope = new double[n + 1];
      for (Row row : rows) {
        double sum = now[0];
        for (int i = 0; i < n; i++) {
          sum += now[i + 1] * (row.figures()[i] - means[i]) / spreads[i];
        }
        double wrong = Odds.chance(sum) - (row.so() ? 1 : 0);
        slope[0] += wrong;
        for (int i = 0; i < n; i++) {
          slope[i + 1] += wrong * (row.figures()[i] - means[i]) / spreads[i];
        }
      }
      for (int i = 0; i <= n; i++) {
        now[i] -= STEP * (slope[i] / rows.size() + (i == 0 ? 0 : RIDGE * now[i]));
      }
    }
    Double[] values = new Double[n + 1];
    values[0] = now[0];
    for (int i = 0; i < n; i++) {
      values[i + 1] = now[i + 1] / spreads[i];
      values[0] -= now[i + 1] * means[i] / spreads[i];
    }
    return new Coefficients(List.of(values));
  }

  /** As a line of the list. */
  String line(String name) {
    StringBuilder line = new StringBuilder(name + ":");
    values.forEach(value -> line.append(String.format(Locale.ROOT, " %.4f", value)));
    return line.toString();
  }
}
