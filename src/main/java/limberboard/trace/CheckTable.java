package limberboard.trace;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import limberboard.effort.Normalised;
import limberboard.library.page.Check;
import limberboard.library.value.Likelihood;

/**
 * How likely each answer to a page's check is under each cause, by the file formats' rule: see
 * {@link Normalised#ofAnswers}. A cause that the check does not mention for any answer counts as
 * {@code others}; where there are no others either, and for something else, every answer is as
 * likely as the next.
 *
 * @param check the page's check
 */
record CheckTable(Check check) {

  /**
   * The table answer × cause.
   *
   * @param causes cause ids in order; something else is added as the last column
   */
  double[][] of(List<String> causes) {
    double[][] table = new double[check.answers().size()][causes.size() + 1];
    for (int cause = 0; cause < causes.size(); cause++) {
      fill(table, cause, Normalised.ofAnswers(given(named(causes.get(cause)))));
    }
    fill(table, causes.size(), Normalised.ofAnswers(nothingGiven()));
    return table;
  }

  private String named(String cause) {
    boolean mentioned =
        check.answers().stream().anyMatch(answer -> finds(answer).containsKey(cause));
    return mentioned ? cause : Check.OTHERS;
  }

  private List<OptionalDouble> given(String name) {
    return check.answers().stream()
        .map(answer -> finds(answer).get(name))
        .map(found -> found == null ? OptionalDouble.empty() : OptionalDouble.of(found.value()))
        .toList();
  }

  private List<OptionalDouble> nothingGiven() {
    return check.answers().stream().map(answer -> OptionalDouble.empty()).toList();
  }

  private Map<String, Likelihood> finds(String answer) {
    return check.finds().getOrDefault(answer, Map.of());
  }

  private static void fill(double[][] table, int cause, double[] shares) {
    for (int answer = 0; answer < shares.length; answer++) {
      table[answer][cause] = shares[answer];
    }
  }
}
