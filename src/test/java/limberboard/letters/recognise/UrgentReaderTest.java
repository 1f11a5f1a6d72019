package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.letters.recognise.Recognition.Urgent;
import limberboard.letters.recognise.UrgentReader.Danger;
import limberboard.letters.recognise.UrgentReader.Told;
import org.junit.jupiter.api.Test;

/** Which danger a letter is said to tell of. */
class UrgentReaderTest {
  private static final Optional<UrgentRules.Alarm> NO_RULE = Optional.empty();
  private static final Optional<UrgentRules.Alarm> RIG =
      Optional.of(new UrgentRules.Alarm("the rig is loose", 2, 4));
  private static final Told WATER = new Told("water gains on her", 0.4, 0, 9);
  private static final Told FAINT = new Told("something burns", 0.01, 9, 11);
  private static final Told FAINTER = new Told("somebody is hurt", 0.005, 11, 20);

  private static Told likeliest(List<Told> sentences, Optional<UrgentRules.Alarm> rule) {
    return new Danger(sentences, 3, 2, rule).likeliest().orElseThrow();
  }

  @Test
  void aSentenceThatTellsOfItNamesIt() {
    assertThat(likeliest(List.of(WATER, FAINT), NO_RULE)).isEqualTo(WATER);
  }

  @Test
  void aRuleNamesItUnlessASentenceIsSurer() {
    assertThat(likeliest(List.of(WATER, FAINT), RIG).what()).isEqualTo("the rig is loose");
    Told sure = new Told("gas can be smelt", 0.9, 0, 5);
    assertThat(likeliest(List.of(sure), RIG)).isEqualTo(sure);
  }

  @Test
  void whereNoneSaysSoTheWholeLetterStillCounts() {
    Told unnamed = likeliest(List.of(FAINT, FAINTER), NO_RULE);
    assertThat(unnamed.what()).isEqualTo(Urgent.UNNAMED);
    assertThat(List.of(unnamed.from(), unnamed.to())).containsExactly(11, 20);
    assertThat(likeliest(List.of(FAINT), NO_RULE).from()).isEqualTo(9);
  }

  @Test
  void anEmptyLetterTellsOfNothing() {
    assertThat(new Danger(List.of(), 3, 2, NO_RULE).likeliest()).isEmpty();
  }
}
