package limberboard.upkeep.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Choices where some chores do others as well, against every choice there is. */
class MeetingsTest {
  private static final long STEPS = ChoiceSearch.USUAL_STEPS;

  private static Chore chore(int minutes, long worth, Integer... after) {
    return new Chore(minutes, worth, Set.of(after), Set.of(), 0, 0, Chore.ANY_STAGE);
  }

  private static Chores day(int minutes, Chore... chores) {
    return new Chores(List.of(chores), List.of(), List.of(minutes));
  }

  @Test
  void whatTheWholeDoesAsWellTakesNoTimeOfItsOwn() {
    Chores chores = day(90, chore(60, 10), chore(30, 8), chore(30, 5));
    DayChoice choice = Meetings.of(chores, List.of(new Meeting(0, 1)), STEPS);
    assertThat(choice.days()).containsExactly(0, -1, 0);
    assertThat(choice.worth()).isEqualTo(23);
    assertThat(choice.isBest()).isTrue();
  }

  @Test
  void withoutTheWholeThePartStandsByItself() {
    Chores chores = day(40, chore(60, 10), chore(30, 8));
    DayChoice choice = Meetings.of(chores, List.of(new Meeting(0, 1)), STEPS);
    assertThat(choice.days()).containsExactly(-1, 0);
    assertThat(choice.worth()).isEqualTo(8);
  }

  @Test
  void aWholeThatIsWorthLittleIsChosenForWhatItDoesToo() {
    Chores chores = day(60, chore(60, 1), chore(40, 9), chore(40, 9));
    List<Meeting> meetings = List.of(new Meeting(0, 1), new Meeting(0, 2));
    assertThat(Meetings.of(chores, meetings, STEPS).days()).containsExactly(0, -1, -1);
  }

  @Test
  void onlyWhatComesLaterOrWaitsForBothIsMet() {
    Meeting meeting = new Meeting(0, 1);
    Chores partFirst = day(90, chore(60, 10, 1), chore(30, 8));
    Chores othersWait = day(90, chore(60, 10), chore(30, 8), chore(10, 3, 1));
    Chores bothWait = day(90, chore(60, 10), chore(30, 8), chore(10, 3, 0, 1));
    assertThat(Meetings.possible(partFirst, List.of(meeting))).isEmpty();
    assertThat(Meetings.possible(othersWait, List.of(meeting))).isEmpty();
    assertThat(Meetings.possible(bothWait, List.of(meeting))).containsExactly(meeting);
    assertThat(Meetings.of(bothWait, List.of(meeting), STEPS).days()).containsExactly(0, -1, 0);
  }

  @Test
  void whatWaitsForAPartAndIsAnotherPartKeepsNeitherBack() {
    Chores chores = day(90, chore(60, 10), chore(30, 8), chore(10, 3, 1));
    List<Meeting> meetings = List.of(new Meeting(0, 1), new Meeting(0, 2));
    assertThat(Meetings.possible(chores, meetings)).hasSameElementsAs(meetings);
    DayChoice choice = Meetings.of(chores, meetings, STEPS);
    assertThat(choice.days()).containsExactly(0, -1, -1);
    assertThat(choice.worth()).isEqualTo(21);
  }

  private static List<Meeting> deal(Random random, Chores chores) {
    Set<Integer> doers = new TreeSet<>();
    List<Meeting> all = new ArrayList<>();
    for (int i = 0; i < 6 && chores.chores().size() > 1; i++) {
      int doer = random.nextInt(chores.chores().size());
      int met = random.nextInt(chores.chores().size());
      doers.add(doer);
      if (doer != met && doers.size() <= Meetings.MOST_DOERS && !all.contains(of(doer, met))) {
        all.add(of(doer, met));
      }
    }
    return all;
  }

  private static Meeting of(int doer, int met) {
    return new Meeting(doer, met);
  }

  @ParameterizedTest
  @CsvSource({"12, 1, 300", "8, 2, 300", "6, 3, 200"})
  void isTheBestOfAllChoices(int most, int days, int rounds) {
    Random random = new Random(20_261_129 + days);
    int met = 0;
    int alone = 0;
    for (int round = 0; round < rounds; round++) {
      Chores chores = DealtChores.deal(random, most, days);
      List<Meeting> dealt = deal(random, chores);
      List<Meeting> meetings = EveryChoice.possible(chores, dealt);
      DayChoice choice = Meetings.of(chores, dealt, STEPS);
      int[] found = choice.days().stream().mapToInt(Integer::intValue).toArray();
      String said = chores + " " + meetings + " " + choice;
      assertThat(Meetings.possible(chores, dealt)).hasSameElementsAs(meetings);
      assertThat(EveryChoice.isAllowed(chores, meetings, found)).as(said).isTrue();
      assertThat(choice.worth()).isEqualTo(EveryChoice.worth(chores, meetings, found));
      assertThat(choice.worth()).as(said).isEqualTo(EveryChoice.worth(chores, meetings));
      assertThat(choice.isBest()).as(said).isTrue();
      for (Meeting each : meetings) {
        boolean done = found[each.met()] >= 0;
        assertThat(done && found[each.doer()] >= 0).as(said).isFalse();
        met += found[each.doer()] >= 0 ? 1 : 0;
        alone += done ? 1 : 0;
      }
    }
    assertThat(met).as("chores that another does").isGreaterThan(20);
    assertThat(alone).as("chores that stand by themselves").isGreaterThan(20);
  }

  @Test
  void boundHoldsHoweverLittleIsLookedAt() {
    Random random = new Random(8);
    for (int round = 0; round < 200; round++) {
      Chores chores = DealtChores.deal(random, 8, 2);
      List<Meeting> meetings = EveryChoice.possible(chores, deal(random, chores));
      long best = EveryChoice.worth(chores, meetings);
      DayChoice choice = Meetings.of(chores, meetings, random.nextInt(200));
      assertThat(choice.worth()).isLessThanOrEqualTo(best);
      assertThat(choice.most()).as("%s %s", chores, meetings).isGreaterThanOrEqualTo(best);
    }
  }

  @Test
  void ofManyThoseCountWhoseMetChoresAreWorthMost() {
    List<Chore> chores = new ArrayList<>();
    List<Meeting> meetings = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      chores.add(chore(20, 5));
      chores.add(chore(10, i + 1L));
      meetings.add(new Meeting(2 * i, 2 * i + 1));
    }
    List<Meeting> kept = Meetings.possible(day(100, chores.toArray(Chore[]::new)), meetings);
    assertThat(kept.stream().map(Meeting::doer).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(6, 8, 10, 12, 14);
  }
}
