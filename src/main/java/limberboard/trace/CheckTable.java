package limberboard.trace;

import java.util.Arrays;
import java.util.List;
import limberboard.cases.CountedCases;
import limberboard.library.page.Check;

/**
 * How likely each answer to a page's check is under each cause, by the file formats' rule: see
 * {@link Check#chances}. A cause that the check does not mention for any answer counts as {@code
 * others}; where there are no others either, and for something else, every answer is as likely as
 * the next.
 *
 * <p>What recorded cases say of a cause's answers is counted to the page's estimate.
 *
 * @param check the page's check
 * @param cases the recorded cases that count
 */
record CheckTable(Check check, CountedCases cases) {

  /**
   * The table answer × cause.
   *
   * @param causes cause ids in order; something else is added as the last column
   */
  double[][] of(List<String> causes) {
    double[][] table = new double[check.answers().size()][causes.size() + 1];
    for (int cause = 0; cause < causes.size(); cause++) {
      String id = causes.get(cause);
      double[] estimate = check.chances(check.mentions(id) ? id : Check.OTHERS);
      fill(table, cause, cases.answers(check, id, estimate));
    }
    double[] alike = new double[check.answers().size()];
    Arrays.fill(alike, 1.0 / alike.length);
    fill(table, causes.size(), alike);
    return table;
  }

  private static void fill(double[][] table, int cause, double[] shares) {
    for (int answer = 0; answer < shares.length; answer++) {
      table[answer][cause] = shares[answer];
    }
  }
}
