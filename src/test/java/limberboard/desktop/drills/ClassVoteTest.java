package limberboard.desktop.drills;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Hands are typed digit by digit. */
class ClassVoteTest {
  @Test
  void digitsMakeANumberAndTheLastOneCanBeTakenBack() {
    ClassVote vote = ClassVote.NONE.digit("Salt?", 1).digit("Salt?", 2);
    assertThat(vote.of("Salt?")).isEqualTo(12);
    assertThat(vote.back("Salt?").of("Salt?")).isEqualTo(1);
    assertThat(vote.back("Salt?").back("Salt?").hands()).isEmpty();
    assertThat(vote.digit("Salt?", 3).digit("Salt?", 4).of("Salt?")).isEqualTo(4);
  }

  @Test
  void theMostVotedAreNamedAlsoWhenItIsATie() {
    assertThat(ClassVote.NONE.most()).isEmpty();
    ClassVote vote = ClassVote.NONE.digit("Salt?", 4).digit("Hose?", 4).digit("Mend", 1);
    assertThat(vote.most()).containsExactly("Salt?", "Hose?");
    assertThat(vote.digit("Hose?", 0).most()).containsExactly("Hose?");
    assertThat(vote.words()).isEqualTo("4 hands: Salt?\n4 hands: Hose?\n1 hand: Mend");
  }
}
