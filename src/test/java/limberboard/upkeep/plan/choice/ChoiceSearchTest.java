package limberboard.upkeep.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The choice against every choice there is, and what holds of it whatever the question. */
class ChoiceSearchTest {
  private static int[] days(DayChoice choice) {
    return choice.days().stream().mapToInt(Integer::intValue).toArray();
  }

  @ParameterizedTest
  @CsvSource({"14, 1, 400", "9, 2, 400", "7, 3, 300"})
  void isTheBestOfAllChoices(int most, int days, int rounds) {
    Random random = new Random(20_270_415 + days);
    for (int round = 0; round < rounds; round++) {
      Chores chores = DealtChores.deal(random, most, days);
      DayChoice choice = ChoiceSearch.of(chores);
      assertThat(EveryChoice.isAllowed(chores, days(choice))).as("%s %s", chores, choice).isTrue();
      assertThat(choice.worth()).isEqualTo(EveryChoice.worth(chores, days(choice)));
      assertThat(choice.worth()).as("%s", chores).isEqualTo(EveryChoice.worth(chores));
      assertThat(choice.isBest()).as("%s", chores).isTrue();
    }
  }

  @Test
  void boundHoldsHoweverLittleIsLookedAt() {
    Random random = new Random(7);
    int open = 0;
    for (int round = 0; round < 300; round++) {
      Chores chores = DealtChores.deal(random, 9, 2);
      long best = EveryChoice.worth(chores);
      DayChoice choice = ChoiceSearch.of(chores, random.nextInt(60));
      assertThat(EveryChoice.isAllowed(chores, days(choice))).isTrue();
      assertThat(choice.worth()).as("%s", chores).isLessThanOrEqualTo(best);
      assertThat(choice.most()).as("%s", chores).isGreaterThanOrEqualTo(best);
      open += choice.isBest() ? 0 : 1;
    }
    assertThat(open).as("questions that were broken off").isPositive();
  }

  @Test
  void manyChoresEndWithAChoiceThatCanBeCarriedOutAndABound() {
    Chores chores = many(300);
    DayChoice choice = ChoiceSearch.of(chores, 500_000);
    assertThat(EveryChoice.isAllowed(chores, days(choice))).isTrue();
    assertThat(choice.worth()).isPositive().isLessThanOrEqualTo(choice.most());
    assertThat(choice.most() - choice.worth()).isLessThan(choice.most() / 10);
    assertThat(ChoiceSearch.of(chores, 500_000)).isEqualTo(choice);
  }

  static Chores many(int size) {
    Random random = new Random(11);
    List<Chore> chores = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Set<Integer> after = i > 5 && random.nextInt(6) == 0 ? Set.of(random.nextInt(i)) : Set.of();
      Set<Integer> opens = random.nextInt(3) == 0 ? Set.of(random.nextInt(20)) : Set.of();
      int minutes = 10 + random.nextInt(110);
      chores.add(new Chore(minutes, random.nextInt(5000), after, opens, 0, 5, random.nextInt(3)));
    }
    return new Chores(
        chores, java.util.Collections.nCopies(20, 25), List.of(300, 300, 240, 480, 360, 360));
  }

  @Test
  void nothingIsDoneInNoTime() {
    Chore chore = new Chore(10, 5, Set.of(), Set.of(), 0, 0, 0);
    DayChoice choice = ChoiceSearch.of(new Chores(List.of(chore), List.of(), List.of(0)));
    assertThat(choice.done()).isEmpty();
    assertThat(choice.isBest()).isTrue();
    assertThat(ChoiceSearch.of(new Chores(List.of(), List.of(), List.of())).worth()).isZero();
  }

  @Test
  void refusesWhatCannotBeReckoned() {
    Chore first = new Chore(1, 1, Set.of(1), Set.of(), 0, 0, 0);
    Chore second = new Chore(1, 1, Set.of(0), Set.of(), 0, 0, 0);
    Chore lost = new Chore(1, 1, Set.of(5), Set.of(), 0, 0, 0);
    Chore dear = new Chore(1_000_000, 1L << 50, Set.of(), Set.of(), 0, 0, 0);
    assertThatThrownBy(() -> new Chores(List.of(first, second), List.of(), List.of(1)))
        .hasMessageContaining("circle");
    assertThatThrownBy(() -> new Chores(List.of(lost), List.of(), List.of(1)))
        .hasMessageContaining("no number 5");
    assertThatThrownBy(() -> new Chores(List.of(dear), List.of(), List.of(1)))
        .hasMessageContaining("too much");
    assertThatThrownBy(() -> new Chore(-1, 1, Set.of(), Set.of(), 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
