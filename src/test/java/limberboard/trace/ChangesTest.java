package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.library.value.Seen;
import limberboard.library.value.Skill;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangesTest {

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
    assertThat(Changes.times(factor)).isEqualTo(said);
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
}
