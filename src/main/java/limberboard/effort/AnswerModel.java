package limberboard.effort;

import java.util.Arrays;
import java.util.List;

/**
 * How likely each cause is, and how likely each answer to each check is under each cause: numbers
 * only, so that any data of this shape can be run through it.
 *
 * <p>Exactly one cause holds, and given the cause the answers are independent of each other. The
 * chances after some answers follow from Bayes' rule, computed with logarithms so that thousands of
 * answers neither overflow nor vanish. Causes, checks and answers are counted from 0. Immutable.
 */
public final class AnswerModel {
  /** Stands in a list of answers for a check without one. */
  public static final int NOT_ANSWERED = -1;

  private static final double TOLERANCE = 1e-9;

  private final double[] priors;
  private final double[][][] likelihoods;
  private final double[][][] logs;

  /**
   * Makes a model.
   *
   * @param priors how likely each cause is before any answer; need not sum to 1
   * @param checks for each check a table answer × cause of how likely that answer then is
   * @throws IllegalArgumentException when there is no cause, a number is negative or not a number,
   *     the priors are all 0, or a cause's answers to a check do not sum to 1 within 1e-9
   */
  public AnswerModel(double[] priors, List<double[][]> checks) {
    this.priors = Normalised.ofOne(priors);
    this.likelihoods = new double[checks.size()][][];
    for (int check = 0; check < likelihoods.length; check++) {
      likelihoods[check] = checked(check, checks.get(check));
    }
    this.logs = Arrays.stream(likelihoods).map(AnswerModel::logsOf).toArray(double[][][]::new);
  }

  private static double[][] logsOf(double[][] table) {
    return Arrays.stream(table)
        .map(row -> Arrays.stream(row).map(Math::log).toArray())
        .toArray(double[][]::new);
  }

  private double[][] checked(int check, double[][] table) {
    double[] sums = new double[priors.length];
    double[][] copy = new double[table.length][];
    for (int answer = 0; answer < table.length; answer++) {
      copy[answer] = Arrays.copyOf(table[answer], priors.length);
      for (int cause = 0; cause < priors.length; cause++) {
        if (!(copy[answer][cause] >= 0)) {
          throw new IllegalArgumentException(
              "check " + check + ": a likelihood is 0 or more, not " + copy[answer][cause]);
        }
        sums[cause] += copy[answer][cause];
      }
    }
    for (double sum : sums) {
      if (Math.abs(sum - 1) > TOLERANCE) {
        throw new IllegalArgumentException(
            "check " + check + ": the likelihoods of a cause's answers sum to 1, not " + sum);
      }
    }
    return copy;
  }

  /** How many causes there are. */
  public int causes() {
    return priors.length;
  }

  /** How many checks there are. */
  public int checks() {
    return likelihoods.length;
  }

  /** How many answers a check has. */
  public int answers(int check) {
    return likelihoods[check].length;
  }

  /** How likely a cause is before any answer, 0 to 1. */
  public double prior(int cause) {
    return priors[cause];
  }

  /** How likely an answer to a check is when that is the cause, 0 to 1. */
  public double likelihood(int check, int answer, int cause) {
    return likelihoods[check][answer][cause];
  }

  /**
   * The same model with one cause that many times as likely before any answer, and the others as
   * likely among themselves as they were.
   *
   * @param times greater than 0
   */
  public AnswerModel withPrior(int cause, double times) {
    double[] changed = priors.clone();
    changed[cause] *= times;
    return new AnswerModel(changed, List.of(likelihoods));
  }

  /**
   * The same model with another likelihood of one answer under one cause; that cause's other
   * answers share the rest in the proportions they had, or in equal parts where they had none.
   *
   * @param value 0 to 1
   */
  public AnswerModel withLikelihood(int check, int answer, int cause, double value) {
    double[][] table = likelihoods[check];
    double rest = 1 - table[answer][cause];
    double[][] changed = new double[table.length][];
    for (int i = 0; i < table.length; i++) {
      changed[i] = table[i].clone();
      double share = rest > 0 ? table[i][cause] / rest : 1.0 / (table.length - 1);
      changed[i][cause] = i == answer ? value : (1 - value) * share;
    }
    double[][][] tables = likelihoods.clone();
    tables[check] = changed;
    return new AnswerModel(priors, List.of(tables));
  }

  /** One row of a check's table, by cause; not to be changed. */
  double[] row(int check, int answer) {
    return likelihoods[check][answer];
  }

  /**
   * The chances of the causes after some answers.
   *
   * @param answers for each check the number of its answer, or {@link #NOT_ANSWERED}
   * @return chances that sum to 1; the priors when the answers are impossible under every cause
   */
  public double[] chances(int[] answers) {
    return Normalised.ofLogs(logWeights(answers), priors);
  }

  /**
   * The logarithm of how likely these answers are together, whatever the cause.
   *
   * @param answers for each check the number of its answer, or {@link #NOT_ANSWERED}
   * @return 0 or less; negative infinity when they are impossible
   */
  public double logEvidence(int[] answers) {
    double[] weights = logWeights(answers);
    double top = Arrays.stream(weights).max().orElseThrow();
    if (top == Double.NEGATIVE_INFINITY) {
      return top;
    }
    double sum = 0;
    for (double weight : weights) {
      sum += Math.exp(weight - top);
    }
    return top + Math.log(sum);
  }

  /** Adds logarithms in the checks' order, so that the order of answering cannot matter. */
  private double[] logWeights(int[] answers) {
    double[] weights = Arrays.stream(priors).map(Math::log).toArray();
    for (int check = 0; check < logs.length; check++) {
      if (answers[check] != NOT_ANSWERED) {
        double[] row = logs[check][answers[check]];
        for (int cause = 0; cause < weights.length; cause++) {
          weights[cause] += row[cause];
        }
      }
    }
    return weights;
  }

  /** Two models with the same numbers are equal. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof AnswerModel that
            && Arrays.equals(priors, that.priors)
            && Arrays.deepEquals(likelihoods, that.likelihoods);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(priors);
  }
}
