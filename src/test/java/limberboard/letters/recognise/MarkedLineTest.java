package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How the lines of the lists are read. */
class MarkedLineTest {
  @Test
  void eachMarkBecomesANameOfItsOwn() {
    assertThat(MarkedLine.of("[own]'s keel, as on [other]; [former] had none. A [no] sang."))
        .isEqualTo(
            new MarkedLine(
                "", "Fulmar's keel, as on Razorbill; Guillemot had none. A Kittiwake sang."));
  }

  @Test
  void namesAreWrittenSmallOrInCapitalsWhereTheMarkSaysSo() {
    assertThat(MarkedLine.of("its [own:lower] here, RE [own:upper]").text())
        .isEqualTo("its fulmar here, RE FULMAR");
  }

  @Test
  void theSubjectStandsBeforeTheRest() {
    assertThat(MarkedLine.of("Subject: Bilge of [own] / She leaks / a lot."))
        .isEqualTo(new MarkedLine("Bilge of Fulmar", "She leaks / a lot."));
    assertThat(MarkedLine.of("Subject: only that")).isEqualTo(new MarkedLine("only that", ""));
    assertThat(MarkedLine.of("Subject: / She leaks.")).isEqualTo(new MarkedLine("", "She leaks."));
  }

  @Test
  void otherBracketsStay() {
    assertThat(MarkedLine.of("Pin [see photo]").text()).isEqualTo("Pin [see photo]");
  }
}
