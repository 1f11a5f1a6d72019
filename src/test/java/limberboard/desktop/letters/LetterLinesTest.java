package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LetterLinesTest {
  private static final String WRAPPED =
      """
      we have last week chartered the yacht Greenshank by Inner Sound Weeks and
      they have said that I should write directly to you.

      The yacht was nice:
      1) the toilet
      - a list
      With kind regards
      Dieter\
      """;

  @Test
  void onlyBreaksOfMailProgramsAreUndone() {
    String joined = LetterLines.joined(WRAPPED);
    assertThat(joined).hasSameSizeAs(WRAPPED);
    assertThat(joined.lines())
        .containsExactly(
            "we have last week chartered the yacht Greenshank by Inner Sound Weeks and they have"
                + " said that I should write directly to you.",
            "",
            "The yacht was nice:",
            "1) the toilet",
            "- a list",
            "With kind regards",
            "Dieter");
  }

  @Test
  void shortLinesStayAsTheyAre() {
    assertThat(LetterLines.joined("It is\nwet.")).isEqualTo("It is\nwet.");
    assertThat(LetterLines.joined("")).isEmpty();
  }
}
