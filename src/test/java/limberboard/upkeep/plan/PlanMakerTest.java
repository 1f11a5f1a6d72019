package limberboard.upkeep.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Consequence;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Work;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.OneGo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans for all boats of the demo, in winter and in summer, and what holds of every one. */
class PlanMakerTest {
  private static final LocalDate WINTER = LocalDate.of(2026, 11, 28);
  private static final LocalDate UNTIL = LocalDate.of(2027, 4, 15);
  private static final Workspace DEMO = demo();

  private static Workspace demo() {
    try {
      return new WorkspaceReader(new WorkspaceFolders(Path.of("").toAbsolutePath())).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Planning planning(String boat, LocalDate on) {
    return new Planning(Upkeep.of(DEMO.library(), new Fitting(DEMO.boat(boat).orElseThrow(), on)));
  }

  private static PlanAnswer ask(String boat, LocalDate on, PlanOrder order) {
    return planning(boat, on).answer(order);
  }

  private static WorkPlan plan(String boat, LocalDate on, int hours, LocalDate until) {
    PlanOrder order = new PlanOrder(OptionalInt.of(hours * 60), until, List.of(), false);
    return ((PlanAnswer.Made) ask(boat, on, order)).plan();
  }

  private static final List<WorkPlan> PLANS = all().toList();

  static List<WorkPlan> plans() {
    return PLANS;
  }

  /**
   * A boat as if she had been bought with an empty log, with two free weekends before launching.
   */
  private static WorkPlan bought(String id) {
    Boat boat = DEMO.boat(id).orElseThrow().with(List.of()).bought(LocalDate.of(2026, 10, 3));
    Planning planning = new Planning(Upkeep.of(DEMO.library(), new Fitting(boat, WINTER)));
    PlanOrder order = new PlanOrder(OptionalInt.of(24 * 60), UNTIL, List.of(), false);
    return ((PlanAnswer.Made) planning.answer(order)).plan();
  }

  @Test
  void ofABoughtBoatWhatNobodyKnowsIsPlannedByDangerAndLooksComeBeforeWhatTheyTellAbout() {
    for (String id : List.of("whimbrel", "redshank", "turnstone", "sanderling")) {
      WorkPlan plan = bought(id);
      assertThat(plan.lines().anyMatch(line -> line.work().isNotKnown())).as(id).isTrue();
      List<String> order =
          plan.lines().flatMap(line -> line.work().pages().stream().map(Page::id)).toList();
      for (PlanLine line : plan.lines().toList()) {
        for (Page<Procedure> page : line.work().pages()) {
          for (String look : page.details().resets()) {
            boolean isLook =
                DEMO.library().procedure(look).orElseThrow().details().work() == Work.INSPECT;
            if (isLook && order.contains(look)) {
              assertThat(order.indexOf(look)).as(look).isLessThan(order.indexOf(page.id()));
            }
          }
        }
      }
      assertThat(plan.undone())
          .filteredOn(undone -> undone.reason() == Undone.Reason.NO_TIME)
          .as(id)
          .noneMatch(
              undone ->
                  undone.work().isNotKnown()
                      && undone.work().consequence() == Consequence.SINKS
                      && undone.work().minutes() < 15);
    }
  }

  @Test
  void whatNobodyKnowsIsLookedAtBeforeItIsRenewed() {
    Boat boat = DEMO.boat("whimbrel").orElseThrow();
    Boat bought = boat.with(List.of()).bought(LocalDate.of(2026, 10, 3));
    String renewal = "renew-standing-rigging";
    assertThat(earlier(bought, renewal)).contains("mast-on-trestles");
    assertThat(earlier(boat.with(List.of()), renewal)).doesNotContain("mast-on-trestles");
  }

  /** What comes before work of a boat. */
  private static Set<String> earlier(Boat boat, String page) {
    Upkeep upkeep = Upkeep.of(DEMO.library(), new Fitting(boat, WINTER));
    List<Task> tasks =
        DueWorks.of(upkeep, UNTIL).stream()
            .map(work -> work.task(work.phase().orElse(Phase.AFLOAT)))
            .toList();
    return OneGo.earlier(tasks).earlier().get(page);
  }

  @Test
  void whatTakesHalfADayWithinARoundIsPlannedByItself() {
    Map<String, DueWork> works =
        DueWorks.of(planning("dunlin", WINTER).upkeep(), UNTIL).stream()
            .collect(Collectors.toMap(work -> work.work().id(), work -> work));
    DueWork round = works.get("hull-before-launch");
    assertThat(round.minutes()).isBetween(30, 239);
    assertThat(round.pages()).extracting(Page::id).contains("inspect-hull-ashore");
    assertThat(round.pages()).extracting(Page::id).doesNotContain("antifoul-hull");
    assertThat(works.get("antifoul-hull").minutes()).isBetween(240, 480);
  }

  private static Stream<WorkPlan> all() {
    LocalDate july = LocalDate.of(2026, 7, 3);
    return Stream.concat(
        Stream.of("whimbrel", "redshank").map(PlanMakerTest::bought),
        DEMO.boats().stream()
            .map(boat -> boat.id())
            .flatMap(
                boat ->
                    Stream.of(
                        plan(boat, WINTER, 4, UNTIL),
                        plan(boat, WINTER, 16, UNTIL),
                        plan(boat, WINTER, 60, UNTIL),
                        plan(boat, july, 10, july.plusDays(20)))));
  }

  private static String said(WorkPlan plan) {
    return plan.fitting().boat().id() + " on " + plan.fitting().on();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void keepsTheHoursOfEachDay(WorkPlan plan) {
    for (PlanDay day : plan.days()) {
      assertThat(day.minutes()).as(said(plan)).isLessThanOrEqualTo(day.free().minutes());
      int opening = 0;
      Set<String> open = new HashSet<>();
      for (PlanLine line : day.lines()) {
        for (Access access : line.line().open()) {
          assertThat(open.add(access.id())).as("%s opened twice", access.id()).isTrue();
          opening += (int) Math.ceil(access.minutes());
        }
      }
      assertThat(day.opening()).isEqualTo(opening);
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everythingDueIsDoneOnceOrStaysUndone(WorkPlan plan) {
    List<String> all = new ArrayList<>(plan.lines().map(line -> line.line().work().id()).toList());
    plan.lines().forEach(line -> line.also().forEach(also -> all.add(also.work().id())));
    plan.undone().forEach(undone -> all.add(undone.work().work().id()));
    Upkeep upkeep = Upkeep.of(DEMO.library(), plan.fitting());
    assertThat(all).doesNotHaveDuplicates();
    assertThat(all)
        .containsExactlyInAnyOrderElementsOf(
            DueWorks.of(upkeep, plan.wish().until()).stream()
                .map(work -> work.work().id())
                .toList());
    assertThat(plan.lines().map(line -> line.line().number()).toList())
        .isEqualTo(Stream.iterate(1, number -> number + 1).limit(plan.lines().count()).toList());
  }

  @Test
  void whatOtherWorkOfThePlanDoesAsWellIsInItOnce() {
    int also = 0;
    for (WorkPlan plan : PLANS) {
      List<String> done =
          plan.lines().flatMap(line -> line.work().pages().stream()).map(Page::id).toList();
      for (PlanLine line : plan.lines().toList()) {
        for (DueWork each : line.also()) {
          assertThat(line.work().pages().stream().flatMap(page -> page.details().resets().stream()))
              .contains(each.work().id());
          assertThat(done).as(said(plan)).doesNotContain(each.work().id());
          also++;
        }
      }
    }
    assertThat(also).as("work that other work does as well").isPositive();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void whatComesBeforeIsDoneBefore(WorkPlan plan) {
    List<String> order = plan.lines().map(line -> line.line().work().id()).toList();
    List<String> undone =
        plan.undone().stream()
            .map(Undone::work)
            .filter(
                work ->
                    work.need() == Need.MUST
                        || work.consequence() == Consequence.SINKS
                        || work.consequence() == Consequence.HURTS)
            .map(work -> work.work().id())
            .toList();
    Stream.concat(
            plan.lines().map(line -> line.line().work()),
            plan.undone().stream().map(each -> each.work().work()))
        .forEach(
            page ->
                page.details()
                    .before()
                    .forEach(
                        later -> {
                          if (order.contains(later)) {
                            assertThat(undone).as("before %s", later).doesNotContain(page.id());
                            assertThat(order.indexOf(page.id())).isLessThan(order.indexOf(later));
                          }
                        }));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void onEachDaySheLiesAsTheWorkNeedsHer(WorkPlan plan) {
    Upkeep upkeep = Upkeep.of(DEMO.library(), plan.fitting());
    boolean mastUp = false;
    for (PlanDay day : plan.days()) {
      boolean afloat = upkeep.seasons().afloat(day.free().day());
      for (PlanLine line : day.lines()) {
        line.work()
            .phase()
            .ifPresent(
                phase ->
                    assertThat(phase == Phase.AFLOAT || phase == Phase.UNDER_SAIL)
                        .as(line.work().title())
                        .isEqualTo(afloat));
        boolean down = line.work().phase().filter(p -> p == Phase.ASHORE_MAST_DOWN).isPresent();
        assertThat(down && mastUp && isFree(plan, line))
            .as("%s with the mast up again", line.work().title())
            .isFalse();
        mastUp |= line.work().phase().filter(p -> p == Phase.ASHORE_MAST_UP).isPresent();
      }
    }
  }

  /** Whether no page of the plan says that it comes before this. */
  private static boolean isFree(WorkPlan plan, PlanLine line) {
    return plan.lines()
        .noneMatch(
            other -> other.line().work().details().before().contains(line.line().work().id()));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void provesHowFarItIsFromTheBest(WorkPlan plan) {
    long danger =
        plan.lines()
            .flatMap(line -> Stream.concat(Stream.of(line.work()), line.also().stream()))
            .mapToLong(work -> work.danger(plan.wish().until()))
            .sum();
    assertThat(plan.proof().danger()).isEqualTo(danger).isPositive();
    assertThat(plan.proof().most()).isBetween(danger, plan.proof().all());
    assertThat(plan.proof().gap()).isBetween(0L, 5L);
  }

  @ParameterizedTest
  @CsvSource({"dunlin", "whimbrel"})
  void noAmountOfComfortOutweighsAnyDanger(String boat) {
    Upkeep upkeep = planning(boat, WINTER).upkeep();
    FreeDays days = FreeDays.proposed(960, WINTER, UNTIL, 0, 300);
    PlanWish wish = new PlanWish(days, UNTIL, false);
    List<DueWork> works = DueWorks.of(upkeep, UNTIL);
    PlanQuestion question = new PlanQuestion(upkeep, wish, works);
    long comfort = 0;
    long least = Long.MAX_VALUE;
    for (int i = 0; i < works.size(); i++) {
      long worth = question.numbers().chores().get(i).worth();
      if (works.get(i).danger(UNTIL) == 0) {
        comfort += worth;
      } else {
        least = Math.min(least, worth);
      }
    }
    assertThat(least).isGreaterThan(comfort);
  }

  @ParameterizedTest
  @CsvSource({"sanderling", "turnstone"})
  void layingUpIsPlannedInTheFirstHalfOfTheWinterOrSaidToBeTooLate(String boat) {
    LocalDate spring = LocalDate.of(2027, 3, 20);
    WorkPlan late = onDays(boat, spring, spring.plusDays(1), spring.plusDays(7));
    assertThat(late.lines()).noneMatch(line -> line.work().isForWinter());
    assertThat(late.undone())
        .filteredOn(undone -> undone.work().isForWinter())
        .isNotEmpty()
        .allMatch(undone -> undone.reason() == Undone.Reason.FOR_LAYING_UP);
    LocalDate autumn = LocalDate.of(2026, 12, 5);
    WorkPlan early = onDays(boat, autumn, autumn.plusDays(1), autumn.plusDays(7));
    assertThat(early.lines()).anyMatch(line -> line.work().isForWinter());
  }

  private static WorkPlan onDays(String boat, LocalDate... days) {
    List<FreeDay> free = Stream.of(days).map(day -> new FreeDay(day, 700)).toList();
    PlanWish wish = new PlanWish(new FreeDays(free, false, List.of()), UNTIL, false);
    return new PlanMaker(planning(boat, WINTER).upkeep()).plan(wish);
  }

  @Test
  void moreTimeTakesNoLessDangerOut() {
    long before = 0;
    for (int hours : new int[] {2, 4, 5}) {
      WorkPlan plan = plan("turnstone", WINTER, hours, UNTIL);
      assertThat(plan.proof().isMostDanger()).as("%s", plan.proof()).isTrue();
      assertThat(plan.proof().danger()).isGreaterThan(before);
      before = plan.proof().danger();
    }
  }

  @Test
  void theFirstTimeTakesHalfAsMuchAgain() {
    PlanOrder order = new PlanOrder(OptionalInt.of(480), UNTIL, List.of(), true);
    WorkPlan first = ((PlanAnswer.Made) ask("whimbrel", WINTER, order)).plan();
    first
        .lines()
        .forEach(
            line ->
                assertThat(line.minutes()).isEqualTo((int) Math.ceil(line.work().minutes() * 1.5)));
    assertThat(first.proof().danger())
        .isLessThan(plan("whimbrel", WINTER, 8, UNTIL).proof().danger());
  }

  @Test
  void sameQuestionSameAnswer() {
    assertThat(plan("redshank", WINTER, 16, UNTIL)).isEqualTo(plan("redshank", WINTER, 16, UNTIL));
  }

  @Test
  void saysWhyThereCanBeNoPlan() {
    assertThat(
            ask(
                "dunlin",
                WINTER,
                new PlanOrder(OptionalInt.of(60), WINTER.minusDays(1), List.of(), false)))
        .isInstanceOfSatisfying(
            PlanAnswer.Refused.class, refused -> assertThat(refused.why()).contains("is past"));
    assertThat(ask("dunlin", WINTER, new PlanOrder(OptionalInt.of(0), UNTIL, List.of(), false)))
        .isInstanceOfSatisfying(
            PlanAnswer.Refused.class, refused -> assertThat(refused.why()).contains("more than 0"));
    assertThat(ask("dunlin", WINTER, new PlanOrder(OptionalInt.empty(), UNTIL, List.of(), false)))
        .isInstanceOfSatisfying(
            PlanAnswer.Refused.class,
            refused -> assertThat(refused.why()).contains("how many hours"));
    assertThat(
            ask(
                "dunlin",
                WINTER,
                new PlanOrder(OptionalInt.of(60), UNTIL, List.of("2027-02-30"), false)))
        .isInstanceOfSatisfying(
            PlanAnswer.Refused.class,
            refused -> assertThat(refused.why()).contains("None of the days", "no day 30"));
  }
}
