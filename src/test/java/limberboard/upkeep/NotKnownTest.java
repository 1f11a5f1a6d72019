package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.HowKnown;
import limberboard.boat.HowKnown.From;
import limberboard.boat.LogEntry;
import limberboard.library.value.Consequence;
import limberboard.upkeep.Due.Group;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What nobody knows of a boat that was bought. */
class NotKnownTest {
  private static final LocalDate BOUGHT = LocalDate.of(2026, 10, 3);
  private static final LocalDate ON = LocalDate.of(2026, 11, 28);

  /** A demo boat as if it had been bought with an empty log, on a day after that. */
  record Case(Boat boat, LocalDate on) {
    @Override
    public String toString() {
      return boat.id() + " bought on " + boat.bought().orElseThrow() + ", on " + on;
    }
  }

  @Provide
  Arbitrary<Case> cases() {
    Arbitrary<Boat> boats = Arbitraries.of(Demo.workspace().boats());
    Arbitrary<Integer> years = Arbitraries.integers().between(0, 3000);
    Arbitrary<Integer> days = Arbitraries.integers().between(0, 700);
    return Combinators.combine(boats, years, days)
        .as(
            (boat, age, since) -> {
              LocalDate bought = boat.ageFrom().plusDays(age);
              Boat empty = Demo.with(boat, List.of()).bought(bought);
              return new Case(empty, bought.plusDays(since));
            });
  }

  private static Boat whimbrel() {
    return Demo.with(Demo.boat("whimbrel"), List.of()).bought(BOUGHT);
  }

  @Property(seed = "20261129", tries = 150)
  void whatRanOutBeforeSheWasBoughtIsNotKnownAndTheRestIsAsWithoutThat(
      @ForAll("cases") Case drawn) {
    Upkeep bought = Demo.upkeep(drawn.boat(), drawn.on());
    Boat fromTheYard = Demo.with(Demo.boat(drawn.boat().id()), List.of());
    Upkeep plain = Demo.upkeep(fromTheYard, drawn.on());
    LocalDate day = drawn.boat().bought().orElseThrow();
    assertThat(bought.all()).extracting(Due::id).hasSameElementsAs(ids(plain.all()));
    for (Due due : bought.all()) {
      Due same = Demo.find(plain, due.id()).orElseThrow();
      assertThat(due.runsOut()).as(due.id()).isEqualTo(same.runsOut());
      assertThat(due.plan()).as(due.id()).isEqualTo(same.plan());
      if (due.isKnown()) {
        assertThat(due.isOver(drawn.on())).as(due.id()).isEqualTo(same.isOver(drawn.on()));
        assertThat(due.isOver(day.minusDays(1)) && due.phase().isEmpty()).as(due.id()).isFalse();
      } else {
        assertThat(due.lastDay()).as(due.id()).isEmpty();
        assertThat(due.isOver(drawn.on())).as(due.id()).isFalse();
        assertThat(due.group()).as(due.id()).isNotIn(Group.COMING, Group.UNKNOWN);
      }
    }
    assertThat(bought.forecast(2)).extracting(Planned::id).isEqualTo(planned(plain));
  }

  private static List<String> ids(List<Due> all) {
    return all.stream().map(Due::id).toList();
  }

  private static List<String> planned(Upkeep upkeep) {
    return upkeep.forecast(2).stream().map(Planned::id).toList();
  }

  @Property(seed = "20261129", tries = 150)
  void dangerComesFirstAndOfTheSameDangerTheLooks(@ForAll("cases") Case drawn) {
    List<Due> lines =
        Demo.upkeep(drawn.boat(), drawn.on()).of(Group.NOT_KNOWN).stream()
            .filter(due -> due.round().isEmpty())
            .toList();
    assertThat(lines)
        .isSortedAccordingTo(
            Comparator.comparing(Due::consequence).thenComparing(due -> !due.isLook()));
  }

  @Property(seed = "20261129", tries = 150)
  void whateverIsToldAboutWorkMakesItKnown(@ForAll("cases") Case drawn, @ForAll int which) {
    Upkeep before = Demo.upkeep(drawn.boat(), drawn.on());
    List<Due> open = before.all().stream().filter(due -> !due.isKnown()).toList();
    if (open.isEmpty()) {
      return;
    }
    Due one = open.get(Math.floorMod(which, open.size()));
    LocalDate day = drawn.boat().bought().orElseThrow();
    List<LogEntry> log =
        new ArrayList<>(List.of(LogEntry.known(day, one.work().id(), new HowKnown(From.SAID))));
    Upkeep after = Demo.upkeep(Demo.with(drawn.boat(), log), drawn.on());
    Due now = Demo.find(after, one.id()).orElseThrow();
    assertThat(now.isKnown()).isTrue();
    assertThat(now.since().date()).isEqualTo(day);
    assertThat(now.why().said()).contains("the previous owner said so, not checked");
  }

  @Test
  void aBoughtBoatHasNothingOverdueThatNobodyKnows() {
    Upkeep upkeep = Demo.upkeep(whimbrel(), ON);
    assertThat(upkeep.of(Group.OVERDUE)).isEmpty();
    assertThat(upkeep.of(Group.NOT_KNOWN)).isNotEmpty().noneMatch(Due::isKnown);
    Due first = upkeep.of(Group.NOT_KNOWN).get(0);
    assertThat(first.consequence()).isEqualTo(Consequence.SINKS);
    assertThat(first.isLook()).isTrue();
    assertThat(first.why().said()).endsWith("not known when it was last done: look now");
  }

  @Test
  void aRenewalSaysToFindOutOrRenew() {
    Due flares = Demo.find(Demo.upkeep(whimbrel(), ON), "renew-flares").orElseThrow();
    assertThat(flares.why().said())
        .isEqualTo(
            "3 years; not known when it was last done: find its date or ask, and log"
                + " that; otherwise renew it");
  }

  @Test
  void beforeTheDayOnWhichSheIsBoughtThatDayIsNotCounted() {
    Upkeep upkeep = Demo.upkeep(whimbrel(), BOUGHT.minusDays(1));
    assertThat(upkeep.of(Group.NOT_KNOWN)).isEmpty();
    assertThat(upkeep.of(Group.OVERDUE)).isNotEmpty();
  }

  @Test
  void aListSaysThatNobodyKnowsAndNamesNoDay() {
    SeasonWork season = Demo.upkeep(whimbrel(), ON).season(2027);
    Optional<Planned> flares =
        season.planned().stream().filter(each -> each.id().equals("renew-flares")).findFirst();
    assertThat(flares).isPresent();
    assertThat(flares.get().lastDay()).isEmpty();
    assertThat(flares.get().why()).isInstanceOf(Why.NotKnown.class);
  }
}
