package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.library.value.Likelihood;
import limberboard.library.value.Seen;
import limberboard.library.value.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TraceWordingTest {

  @ParameterizedTest
  @CsvSource({"0, 0 %", "0.002, under 1 %", "0.123, 12 %", "0.998, over 99 %", "1, 100 %"})
  void saysPerCent(double chance, String said) {
    assertThat(TraceWording.percent(chance)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "1.75, twice as likely",
    "2.4, twice as likely",
    "2.5, three times as likely",
    "10.4, ten times as likely",
    "11, more than ten times as likely",
    "Infinity, more than ten times as likely"
  })
  void saysFactors(double factor, String said) {
    assertThat(TraceWording.times(factor)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "1, as good as certain",
    "0.93, almost certain",
    "0.8, likely",
    "0.5, as likely as not",
    "0.3, less likely than not",
    "0.16, unlikely",
    "0.06, very unlikely",
    "0.03, most unlikely",
    "0, as good as ruled out"
  })
  void saysAChanceByTheNearestLikelihoodWord(double chance, String said) {
    assertThat(ChanceWord.of(chance)).isEqualTo(said);
  }

  /** In a list of the likeliest, not all can be unlikely: what leads says how often it is so. */
  @ParameterizedTest
  @CsvSource({
    "0.5, as likely as not",
    "0.39, as likely as not",
    "0.33, about one in three",
    "0.22, about one in five",
    "0.16, about one in six",
    "0.1, about one in ten",
    "0.083, about one in 12",
    "0.066, about one in 15",
    "0.03, about one in 30",
    "0.02, about one in 50",
    "0.01, as good as ruled out"
  })
  void saysAChanceOfAListAsOneInSoMany(double chance, String said) {
    assertThat(ChanceWord.listed(chance)).isEqualTo(said);
  }

  /** What grows is never said as if it fell, and the other way round. */
  @ParameterizedTest
  @CsvSource({
    "0.22, 0.33, likelier",
    "0.05, 0.08, likelier",
    "0.22, 0.23, a little likelier",
    "0.1, 0.33, three times as likely",
    "0.95, 0.6, less likely",
    "0.33, 0.22, less likely",
    "0.23, 0.22, a little less likely"
  })
  void saysWhichWayAChanceWent(double before, double after, String said) {
    FaultCause cause =
        new FaultCause(
            "a", "A", "", before, "", "", "", 1, List.of(), 1, Seen.AT_ONCE, Skill.YARD, List.of());
    assertThat(
            new Changes(List.of(cause, cause))
                .said("It", new double[] {before, before}, new double[] {after, before}))
        .startsWith("It makes “A” " + said + " (");
  }

  @Test
  void hasAWordOfItsOwnForEveryLikelihoodWord() {
    assertThat(Likelihood.scale().values().stream().map(ChanceWord::of).distinct())
        .hasSameSizeAs(Likelihood.scale().keySet());
  }
}
