package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import limberboard.ContentTest;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How well the demo's letters are recognised, each by what the others taught. */
@ContentTest
class LetterQualityTest {
  private static LetterQuality quality;

  @BeforeAll
  static void measure() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of("").toAbsolutePath());
    List<RecordedLetter> letters = RecordedLetter.read(folders.letters());
    assertThat(letters).hasSizeGreaterThan(60);
    quality =
        new Teaching(folders, new WorkspaceReader(folders).read(), LocalDate.of(2026, 11, 29))
            .quality(letters);
  }

  private static double share(String what) {
    return quality.shares().stream()
        .filter(each -> each.what().equals(what))
        .findFirst()
        .orElseThrow()
        .of();
  }

  @Test
  void theRightSymptomComesFirst() {
    assertThat(share(LetterQuality.FIRST)).isGreaterThan(0.93);
    assertThat(share(LetterQuality.FIRST_THREE)).isGreaterThan(0.955);
  }

  @Test
  void noneIsSaidWhereTheLibraryHasNone() {
    assertThat(share(LetterQuality.NONE_OF_UNKNOWN)).isGreaterThan(0.76);
    assertThat(share(LetterQuality.NONE_OF_NO_FAULT)).isGreaterThan(0.85);
    assertThat(share(LetterQuality.NONE_OF_KNOWN)).isLessThan(0.045);
  }

  @Test
  void theBoatIsRightAndNeverOneInPassing() {
    assertThat(share(LetterQuality.BOAT)).isGreaterThan(0.94);
    assertThat(share(LetterQuality.BOAT_UNASKED)).isLessThan(0.025);
  }

  @Test
  void mostUrgentLettersAreFound() {
    assertThat(share(LetterQuality.URGENT)).isGreaterThan(0.955);
    assertThat(share(LetterQuality.URGENT_WRONGLY)).isLessThan(0.28);
  }

  @Test
  void itDoesBetterThanNaiveBayesAndItsChancesHold() {
    assertThat(share(LetterQuality.FIRST))
        .isGreaterThan(0.2 + share("by naive Bayes: " + LetterQuality.FIRST));
    assertThat(quality.calibration().brier()).isLessThan(0.14);
    assertThat(quality.calibration().error()).isLessThan(0.08);
  }

  @Test
  void mostAnswersThatAreReadAreGiven() {
    assertThat(share(LetterQuality.ANSWERS_RIGHT)).isGreaterThan(0.68);
    assertThat(share(LetterQuality.ANSWERS_READ)).isGreaterThan(0.45);
  }

  @Test
  void theFiguresAreToldOneALine() {
    assertThat(quality.text().lines()).hasSize(quality.shares().size() + 1);
    assertThat(quality.text()).contains(LetterQuality.FIRST);
  }
}
