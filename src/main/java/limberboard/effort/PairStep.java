package limberboard.effort;

import limberboard.effort.EffortModel.CheckEffort;

/** What a check or a mend does to the chances of two causes that alone are looked at. */
final class PairStep {
  private final double[] minutes;
  private final double[][] chance;
  private final int[][] before;
  private final double[][] onward;

  /**
   * Works out where each outcome leads.
   *
   * @param likelihoods by outcome, how likely it is under the first cause and under the other; what
   *     is left to 1 is that the fault is mended
   * @param ofOne minutes under the first cause
   * @param ofOther minutes under the other
   * @param parts into how many parts the chances of the first cause from 0 to 1 are divided
   */
  private PairStep(double[][] likelihoods, double ofOne, double ofOther, int parts) {
    this.minutes = new double[parts + 1];
    this.chance = new double[likelihoods.length][parts + 1];
    this.before = new int[likelihoods.length][parts + 1];
    this.onward = new double[likelihoods.length][parts + 1];
    for (int at = 0; at <= parts; at++) {
      minutes[at] = (ofOne * at + ofOther * (parts - at)) / parts;
      for (int outcome = 0; outcome < likelihoods.length; outcome++) {
        double first = likelihoods[outcome][0] * at / parts;
        double second = likelihoods[outcome][1] * (parts - at) / parts;
        double place = first + second > 0 ? first / (first + second) * parts : 0;
        chance[outcome][at] = first + second;
        before[outcome][at] = Math.min(parts - 1, (int) place);
        onward[outcome][at] = place - before[outcome][at];
      }
    }
  }

  /** A check: its minutes under both causes, and an outcome for each answer and for none. */
  static PairStep check(EffortModel model, int check, int one, int other, int parts) {
    CheckEffort effort = model.checks().get(check);
    int answers = model.answers().answers(check);
    double told = 1 - effort.cantTell();
    double[][] likelihoods = new double[answers + 1][];
    for (int answer = 0; answer < answers; answer++) {
      double[] row = model.answers().row(check, answer);
      likelihoods[answer] = new double[] {told * row[one], told * row[other]};
    }
    likelihoods[answers] = new double[] {effort.cantTell(), effort.cantTell()};
    return new PairStep(likelihoods, effort.minutes(), effort.minutes(), parts);
  }

  /**
   * The mend of the first cause: in vain under the other, and under the first as often as it does
   * not cure.
   *
   * @param cures how likely it cures under the first cause
   * @param ofOne minutes under the first cause, on top of what it costs when it is known
   * @param ofOther minutes under the other
   */
  static PairStep mendOfOne(double cures, double ofOne, double ofOther, int parts) {
    return new PairStep(new double[][] {{1 - cures, 1}}, ofOne, ofOther, parts);
  }

  /** The mend of the other cause; as {@link #mendOfOne}. */
  static PairStep mendOfOther(double cures, double ofOne, double ofOther, int parts) {
    return new PairStep(new double[][] {{1, 1 - cures}}, ofOne, ofOther, parts);
  }

  /**
   * Lowers values to what they are when this may be done.
   *
   * @param values by part, the least minutes so far; changed
   * @param after by part, the least minutes after it
   */
  void lower(double[] values, double[] after) {
    for (int at = 0; at < values.length; at++) {
      double cost = minutes[at];
      for (int outcome = 0; outcome < chance.length; outcome++) {
        double low = after[before[outcome][at]];
        double high = after[before[outcome][at] + 1];
        cost += chance[outcome][at] * (low + onward[outcome][at] * (high - low));
      }
      values[at] = Math.min(values[at], cost);
    }
  }
}
