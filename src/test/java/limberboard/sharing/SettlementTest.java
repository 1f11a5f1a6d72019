package limberboard.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;
import org.junit.jupiter.api.Test;

/** A choice made for two texts that were looked at counts for these two alone. */
class SettlementTest {
  private static final Conflict SEEN =
      new Conflict("articles/topics/knots.md", "minutes", "", "5", "8", "9");

  @Test
  void aChoiceCountsForTheTextsThatWereLookedAt() {
    Settlement settlement = Settlement.of(Map.of(SEEN, Choice.OURS));
    assertThat(settlement.of(SEEN)).contains(Choice.OURS);
  }

  @Test
  void aChoiceCountsNoMoreWhenTheOtherCopyHasMovedOn() {
    Settlement settlement = Settlement.of(Map.of(SEEN, Choice.OURS));
    Conflict moved = new Conflict(SEEN.file(), SEEN.part(), "", "5", "8", "30");
    assertThat(settlement.of(moved)).isEmpty();
  }

  @Test
  void aChoiceThatWasWrittenDownCountsWhateverTheTextsAre() {
    Settlement settlement = new Settlement(Map.of("knots:minutes", Choice.THEIRS));
    assertThat(settlement.of(SEEN)).contains(Choice.THEIRS);
  }
}
