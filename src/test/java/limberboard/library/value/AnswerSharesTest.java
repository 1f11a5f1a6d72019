package limberboard.library.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule for likelihoods in {@code docs/file-formats.md}; {@code -} is an answer not given. */
class AnswerSharesTest {

  @ParameterizedTest(name = "{0} becomes {1}: {2}")
  @CsvSource({
    "0.77 -,             0.77 0.23,         the other answer takes what is left",
    "0.5 - -,            0.5 0.25 0.25,     what is left is shared in equal parts",
    "- -,                0.5 0.5,           nothing is said: every answer is as likely",
    "- - - -,            0.25 0.25 0.25 0.25, likewise for four",
    "0.2 0.2,            0.5 0.5,           all are given: divided by their sum",
    "0.93 0.93 0.14,     0.465 0.465 0.07,  all are given and come to more than 1",
    "0.84 0.66 -,        0.56 0.44 0,       more than 1 and one left out: nothing is left for it",
    "1 -,                1 0,               nothing is left",
    "0 -,                0 1,               all is left",
    "0 0,                0.5 0.5,           all are given as 0",
    "0 0 -,              0 0 1,             only one is possible"
  })
  void dividesAnswers(String given, String expected, String why) {
    List<OptionalDouble> answers =
        Arrays.stream(given.trim().split(" "))
            .map(
                text ->
                    text.equals("-")
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Double.parseDouble(text)))
            .toList();
    double[] wanted =
        Arrays.stream(expected.trim().split(" ")).mapToDouble(Double::parseDouble).toArray();
    assertThat(Likelihood.shares(answers)).as(why).containsExactly(wanted, within(1e-12));
  }
}
