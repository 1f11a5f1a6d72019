package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Option;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The planner against decision trees of the textbooks: take or leave, after tests or without. Each
 * row of the table names its source, and whether its figures were read or are from memory.
 *
 * <p>How such a choice becomes a fault: with <i>g</i> what taking gains over leaving in the good
 * state and <i>l</i> what it loses in the bad one, let the good state be a cause that is mended for
 * certain in <i>l</i> minutes, and let the yard take <i>g + l</i>. Taking is trying the mend, and
 * leaving is calling the yard. In the good state they then take <i>l</i> and <i>g + l</i>, which
 * differ by <i>g</i>; in the bad one <i>l + (g + l)</i>, because the yard is called after the mend
 * has failed, and <i>g + l</i>, which differ by <i>l</i>. So the best strategies are the same, and
 * the value is what leaving brings on average + <i>g + l</i> − the expected minutes.
 */
class PublishedChoicesTest {

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "published-choices.csv",
      delimiter = '|',
      useHeadersInDisplayName = true)
  void areDecidedAsPublished(
      String example,
      double good,
      String take,
      String leave,
      String tests,
      double value,
      String first) {
    double[] taken = numbers(take);
    double[] left = numbers(leave);
    double gain = taken[0] - left[0];
    double loss = left[1] - taken[1];
    SmallProblem problem = new SmallProblem(good, 1 - good).mend(0, loss);
    for (String test : tests.split(";")) {
      String[] costAndResults = test.split(":");
      problem.check(Double.parseDouble(costAndResults[0].strip()), rows(costAndResults[1]));
    }
    EffortModel model = problem.model(gain + loss);

    Advice advice = new Planner(Long.MAX_VALUE).advise(model, model.beginning());

    double average = good * left[0] + (1 - good) * left[1];
    assertThat(average + gain + loss - advice.best().expectedMinutes())
        .isCloseTo(value, within(0.005));
    assertThat(advice.gap()).isCloseTo(0, within(1e-12));
    assertThat(named(advice.best())).isEqualTo(first);
  }

  private static String named(Option option) {
    if (option.action() == Action.CHECK) {
      return "T" + option.index();
    }
    return option.action() == Action.MEND ? "take" : "leave";
  }

  private static double[][] rows(String results) {
    String[] rows = results.split("/");
    double[][] numbers = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      numbers[i] = numbers(rows[i]);
    }
    return numbers;
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.strip().split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
