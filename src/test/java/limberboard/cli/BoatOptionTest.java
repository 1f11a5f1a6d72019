package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import limberboard.cli.TerminalRun.Ran;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The boat of a command, named as people name boats, on the demo's boats. */
class BoatOptionTest {
  private static Ran run(String... words) {
    return TerminalRun.ofDemo(LocalDate.of(2026, 5, 20)).run(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trace water-in-forward-cabin --boat",
        "tree water-in-forward-cabin --boat",
        "read rebed-deck-fitting --boat",
        "due --boat",
        "list fitting-out --boat",
        "shopping --work rebed-deck-fitting --boat",
        "rigging --boat"
      })
  void aBoatThatNobodyEnteredIsAnsweredFor(String command) {
    String[] words = (command + " BOAT").split(" ");
    words[words.length - 1] = "a Tarnwick 30 of 2017 with carbon mast";
    Ran ran = run(words);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out()).isNotBlank();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Tarnwick 26, 2021 | may mean several boats; write --boat \"redshank\" for Redshank",
        "a Tarnwick 26 | say the year in which she was built",
        "redshnak | did you mean \"redshank\"?",
      })
  void whatIsNotClearIsAsked(String boat, String said) {
    Ran ran = run("due", "--boat", boat);
    assertThat(ran.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(ran.err()).contains(said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Redshank", "141", "hull no. 141"})
  void aBoatIsFoundByNameAndHullNumber(String boat) {
    assertThat(run("due", "--boat", boat).out()).contains("Redshank");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a Tarnwick 26 of 2019"})
  void nothingIsWrittenForABoatThatNobodyEntered(String boat) {
    Ran ran = run("done", "rebed-deck-fitting", "--boat", boat);
    assertThat(ran.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(ran.err()).contains("nobody has entered that boat yet");
  }
}
