package limberboard.effort;

import limberboard.effort.EffortModel.CheckEffort;

/** What one check does to the chances of two causes that alone are looked at. */
final class PairCheck {
  private final double minutes;
  private final double cantTell;
  private final double[][] chance;
  private final int[][] before;
  private final double[][] onward;

  /**
   * Works out where each answer leads.
   *
   * @param model what everything costs
   * @param check the check
   * @param one one of the causes
   * @param other the other
   * @param parts into how many parts the chances of the first cause from 0 to 1 are divided
   */
  PairCheck(EffortModel model, int check, int one, int other, int parts) {
    CheckEffort effort = model.checks().get(check);
    int answers = model.answers().answers(check);
    this.minutes = effort.minutes();
    this.cantTell = effort.cantTell();
    this.chance = new double[answers][parts + 1];
    this.before = new int[answers][parts + 1];
    this.onward = new double[answers][parts + 1];
    for (int answer = 0; answer < answers; answer++) {
      double[] row = model.answers().row(check, answer);
      for (int at = 0; at <= parts; at++) {
        double first = row[one] * at / parts;
        double second = row[other] * (parts - at) / parts;
        double place = first + second > 0 ? first / (first + second) * parts : 0;
        chance[answer][at] = first + second;
        before[answer][at] = Math.min(parts - 1, (int) place);
        onward[answer][at] = place - before[answer][at];
      }
    }
  }

  /**
   * Lowers values to what they are when this check may be made.
   *
   * @param values by part, the least minutes so far; changed
   * @param after by part, the least minutes after the check
   */
  void lower(double[] values, double[] after) {
    for (int at = 0; at < values.length; at++) {
      double told = 0;
      for (int answer = 0; answer < chance.length; answer++) {
        double low = after[before[answer][at]];
        double high = after[before[answer][at] + 1];
        told += chance[answer][at] * (low + onward[answer][at] * (high - low));
      }
      double cost = minutes + (1 - cantTell) * told + cantTell * after[at];
      values[at] = Math.min(values[at], cost);
    }
  }
}
