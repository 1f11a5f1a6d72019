package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.library.page.Procedure;
import limberboard.library.value.Need;
import limberboard.upkeep.Due.Group;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every boat, day and log. */
class UpkeepPropertiesTest {
  /** A boat as it stood after part of its log was lost, on a day. */
  record Case(Boat boat, LocalDate on) {
    @Override
    public String toString() {
      return boat.id()
          + " with "
          + boat.log().size()
          + " lines of her log"
          + boat.bought().map(day -> ", bought on " + day).orElse("")
          + ", on "
          + on;
    }
  }

  @Provide
  Arbitrary<Case> cases() {
    Arbitrary<Boat> boats = Arbitraries.of(Demo.workspace().boats());
    Arbitrary<Integer> days = Arbitraries.integers().between(0, 1800);
    Arbitrary<Long> lost = Arbitraries.longs();
    return Combinators.combine(boats, days, lost)
        .as(
            (boat, day, seed) -> {
              Random random = new Random(seed);
              List<LogEntry> log =
                  boat.log().stream().filter(entry -> random.nextInt(5) > 0).toList();
              LocalDate on = LocalDate.of(2024, 1, 1).plusDays(day);
              Boat kept = Demo.with(boat, log);
              return new Case(
                  random.nextBoolean() ? kept : kept.bought(on.minusDays(random.nextInt(900))), on);
            });
  }

  @Property(seed = "20261125", tries = 300)
  void doingEverythingDueLeavesNothingDueThatDay(@ForAll("cases") Case drawn) {
    Upkeep before = Demo.upkeep(drawn.boat(), drawn.on());
    Boat after = Demo.done(drawn.boat(), before.of(Group.OVERDUE), drawn.on());
    assertThat(Demo.upkeep(after, drawn.on()).of(Group.OVERDUE)).isEmpty();
  }

  @Property(seed = "20261125", tries = 300)
  void noDateEverMovesEarlierByDoingWork(@ForAll("cases") Case drawn, @ForAll int which) {
    Upkeep before = Demo.upkeep(drawn.boat(), drawn.on());
    Due done = before.all().get(Math.floorMod(which, before.all().size()));
    Boat after = Demo.done(drawn.boat(), List.of(done), drawn.on());
    Upkeep now = Demo.upkeep(after, drawn.on());
    for (Due due : before.all()) {
      Optional<LocalDate> then = Demo.find(now, due.id()).flatMap(Due::runsOut);
      if (due.runsOut().isPresent() && then.isPresent()) {
        assertThat(then.get())
            .as("%s after doing %s on %s", due.id(), done.id(), drawn.on())
            .isAfterOrEqualTo(due.runsOut().get());
      } else if (!due.isLookAgain()) {
        assertThat(Demo.find(now, due.id())).as(due.id()).isPresent();
      }
    }
  }

  @Property(seed = "20261125", tries = 200)
  void workIsPlannedWithinItsTimeOrAtMostAMonthAfterIt(@ForAll("cases") Case drawn) {
    Upkeep upkeep = Demo.upkeep(drawn.boat(), drawn.on());
    for (Due due : upkeep.all()) {
      assertThat(due.plan()).as(due.id()).isAfterOrEqualTo(drawn.on());
      if (!due.isOver(drawn.on()) && due.lastDay().isPresent()) {
        assertThat(due.plan()).as(due.id()).isBeforeOrEqualTo(due.lastDay().get().plusDays(31));
      }
    }
  }

  @Property(seed = "20261125", tries = 100)
  void theForecastGoesOnAsIfEachDoingHadBeenLogged(@ForAll("cases") Case drawn) {
    Upkeep upkeep = Demo.upkeep(drawn.boat(), drawn.on());
    List<Planned> forecast = upkeep.forecast(3);
    assertThat(forecast).extracting(Planned::day).isSorted();
    assertThat(forecast).extracting(Planned::day).allMatch(day -> !day.isBefore(drawn.on()));
    for (Due due : upkeep.of(Group.OVERDUE)) {
      Optional<Planned> first = next(forecast, due, drawn.on());
      Optional<Planned> second =
          first.flatMap(planned -> next(forecast, due, planned.day().plusDays(1)));
      if (second.isPresent() && first.get().day().equals(drawn.on()) && isNeverReset(due)) {
        Boat after = Demo.done(drawn.boat(), List.of(due), drawn.on());
        assertThat(Demo.find(Demo.upkeep(after, drawn.on()), due.id()).flatMap(Due::runsOut))
            .as(due.id())
            .contains(second.get().runsOut());
      }
    }
  }

  private static Optional<Planned> next(List<Planned> forecast, Due due, LocalDate from) {
    return forecast.stream()
        .filter(planned -> planned.id().equals(due.id()) && !planned.day().isBefore(from))
        .findFirst();
  }

  private static boolean isNeverReset(Due due) {
    return !due.isLookAgain()
        && Demo.workspace().library().all(Procedure.class).stream()
            .noneMatch(page -> page.details().resets().contains(due.id()));
  }

  @Property(seed = "20261125", tries = 100)
  void whatIsLoggedLaterChangesNothingOfTheDayAskedAbout(@ForAll("cases") Case drawn) {
    List<LogEntry> until =
        drawn.boat().log().stream().filter(entry -> !entry.date().isAfter(drawn.on())).toList();
    Boat cutOff = Demo.with(drawn.boat(), until);
    Boat wentOn = Demo.done(cutOff, Demo.upkeep(cutOff, drawn.on()).all(), drawn.on().plusDays(1));
    assertThat(wentOn.log().size()).isGreaterThan(until.size());
    assertThat(Demo.upkeep(wentOn, drawn.on()).all())
        .isEqualTo(Demo.upkeep(cutOff, drawn.on()).all());
  }

  @Property(seed = "20261125", tries = 60)
  void theWorkOfASeasonIsTheForecastAndTheRestDividedWithoutLoss(@ForAll("cases") Case drawn) {
    Upkeep upkeep = Demo.upkeep(drawn.boat(), drawn.on());
    SeasonWork work = upkeep.season(upkeep.thisSeason().year());
    List<String> named = new ArrayList<>();
    work.planned().forEach(planned -> named.add(planned.id()));
    work.notDue().forEach(due -> named.add(due.id()));
    assertThat(named)
        .containsAll(upkeep.all().stream().filter(d -> !d.isLookAgain()).map(Due::id).toList());
    assertThat(work.notDue())
        .extracting(Due::id)
        .doesNotContainAnyElementsOf(work.planned().stream().map(Planned::id).toList());
  }

  @Property(seed = "20261129", tries = 300)
  void whatIsForTheWinterIsNeverPlannedBetweenMidwinterAndTheHaulOut(@ForAll("cases") Case drawn) {
    Upkeep upkeep = Demo.upkeep(drawn.boat(), drawn.on());
    int winters = 0;
    for (Due due : upkeep.all()) {
      if (!due.isLookAgain() && isForWinter(due)) {
        Seasons seasons = upkeep.seasons();
        AfloatSeason next = seasons.around(due.plan());
        boolean layingUp = !due.plan().isAfter(seasons.layingUpEnds(next.year() - 1));
        assertThat(layingUp || !due.plan().isBefore(next.to()))
            .as("%s planned for %s, afloat from %s", due.id(), due.plan(), next.from())
            .isTrue();
        winters++;
      }
    }
    assertThat(winters).as("work for the winter that was looked at").isPositive();
  }

  private static boolean isForWinter(Due due) {
    return due.work().details().interval().orElseThrow().forWinter();
  }

  @Property(seed = "20261129", tries = 300)
  void aRoundHasOnlyWhatIsDueWithItAndNothingStandsTwice(@ForAll("cases") Case drawn) {
    Upkeep upkeep = Demo.upkeep(drawn.boat(), drawn.on());
    assertThat(upkeep.all()).extracting(Due::id).doesNotHaveDuplicates();
    for (Due due : upkeep.all()) {
      List<String> named =
          due.work().details().round().stream().map(Procedure.RoundWork::work).toList();
      assertThat(due.with()).as(due.id()).allSatisfy(each -> assertThat(named).contains(each.id()));
      for (Due each : due.with()) {
        assertThat(each.round().orElseThrow().round()).isEqualTo(due.id());
        assertThat(each.group() == Group.COMING).as(each.id()).isEqualTo(isComing(due));
      }
    }
    List<String> within =
        upkeep.all().stream().flatMap(due -> due.with().stream()).map(Due::id).sorted().toList();
    List<String> marked =
        upkeep.all().stream().filter(due -> due.round().isPresent()).map(Due::id).sorted().toList();
    assertThat(within).isEqualTo(marked);
  }

  private static boolean isComing(Due due) {
    return due.group() == Group.COMING;
  }

  @Property(seed = "20261129", tries = 200)
  void markingARoundDoneLeavesNothingOfItDueThatDay(@ForAll("cases") Case drawn) {
    Upkeep before = Demo.upkeep(drawn.boat(), drawn.on());
    for (Due round : before.of(Group.OVERDUE)) {
      if (!round.with().isEmpty()) {
        Upkeep after = Demo.upkeep(Demo.done(drawn.boat(), round.all(), drawn.on()), drawn.on());
        assertThat(after.of(Group.OVERDUE))
            .extracting(Due::id)
            .doesNotContainAnyElementsOf(round.all().stream().map(Due::id).toList());
      }
    }
  }

  @Property(seed = "20261129", tries = 200)
  void inEachGroupTheGravestComesFirstThenWhatIsNeededMost(@ForAll("cases") Case drawn) {
    List<Due> lines =
        Demo.upkeep(drawn.boat(), drawn.on()).all().stream()
            .filter(due -> due.round().isEmpty())
            .toList();
    for (int i = 1; i < lines.size(); i++) {
      Due one = lines.get(i - 1);
      Due other = lines.get(i);
      if (one.group() == other.group()) {
        assertThat(one.consequence().compareTo(other.consequence())).isNotPositive();
        boolean lookFirst = one.group() == Group.NOT_KNOWN && one.isLook() != other.isLook();
        if (one.consequence() == other.consequence() && !lookFirst) {
          assertThat(one.need().compareTo(other.need())).isNotPositive();
        }
      }
    }
    assertThat(lines)
        .filteredOn(due -> due.group() == Group.OPTIONAL)
        .allSatisfy(due -> assertThat(due.need()).isEqualTo(Need.OPTIONAL));
  }
}
