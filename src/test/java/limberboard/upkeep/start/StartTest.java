package limberboard.upkeep.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.HowKnown;
import limberboard.boat.HowKnown.From;
import limberboard.boat.HowKnown.To;
import limberboard.boat.LogEntry;
import limberboard.boat.Typed;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start.Standing;
import limberboard.upkeep.start.StartAnswer.Known;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StartTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 28);
  private static final LocalDate BOUGHT = LocalDate.of(2026, 10, 3);
  private static final LocalDate SURVEY = LocalDate.of(2026, 9, 12);
  private static final String SAFETY = "safety-day";

  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static Boat bought(String id) {
    return workspace.boat(id).orElseThrow().with(List.of()).bought(BOUGHT);
  }

  private static Start start(Boat boat) {
    return new Start(Upkeep.of(workspace.library(), new Fitting(boat, ON)));
  }

  private static Start start(Boat boat, List<LogEntry> log) {
    List<LogEntry> sorted = new ArrayList<>(log);
    sorted.sort(Comparator.comparing(LogEntry::date));
    return start(boat.with(sorted));
  }

  private static Known said(int year) {
    return new Known(LocalDate.of(year, 1, 1), new HowKnown(From.SAID, To.YEAR));
  }

  private static Set<String> pages(List<LogEntry> entries) {
    return entries.stream().map(LogEntry::work).collect(Collectors.toSet());
  }

  @Test
  void everyPieceOfWorkIsAskedAboutOnceAndTheGravestFirst() {
    for (Boat boat : workspace.boats()) {
      Start start = start(bought(boat.id()));
      List<String> asked =
          start.questions().stream()
              .flatMap(question -> question.works().stream())
              .map(Due::id)
              .toList();
      assertThat(asked)
          .as(boat.id())
          .doesNotHaveDuplicates()
          .hasSameElementsAs(start.open().stream().map(Due::id).toList());
      assertThat(start.questions())
          .as(boat.id())
          .isSortedAccordingTo(Comparator.comparing(StartQuestion::consequence));
      assertThat(start.questions().size()).as(boat.id()).isLessThanOrEqualTo(asked.size() / 2);
    }
  }

  @Test
  void oneAnswerIsGivenToAWholeRoundAndItIsThenDueAYearLater() {
    Boat boat = bought("whimbrel");
    Start start = start(boat);
    StartQuestion safety =
        start.questions().stream().filter(each -> each.id().equals(SAFETY)).findFirst().get();
    List<LogEntry> lines = start.entries(Map.of(SAFETY, said(2026)));
    assertThat(pages(lines))
        .isEqualTo(safety.works().stream().map(due -> due.work().id()).collect(Collectors.toSet()));
    Start after = start(boat, lines);
    assertThat(after.questions()).extracting(StartQuestion::id).doesNotContain(SAFETY);
    Due round =
        after.upkeep().all().stream()
            .filter(due -> due.id().equals(SAFETY))
            .findFirst()
            .orElseThrow();
    assertThat(round.lastDay()).contains(LocalDate.of(2027, 1, 1));
    assertThat(round.why().said()).contains("since about 2026 (the previous owner said so");
  }

  @Test
  void whatIsAnsweredByItselfCountsBeforeTheRoundAndKeepsTheRoundOpenWhenNotKnown() {
    Start start = start(bought("whimbrel"));
    Map<String, StartAnswer> answers = new HashMap<>();
    answers.put(SAFETY, said(2026));
    answers.put("renew-flares", said(2025));
    answers.put("service-life-jackets", StartAnswer.NOT_KNOWN);
    List<LogEntry> lines = start.entries(answers);
    assertThat(pages(lines))
        .doesNotContain("service-life-jackets", SAFETY)
        .contains("renew-flares");
    assertThat(lines)
        .filteredOn(line -> line.work().equals("renew-flares"))
        .extracting(LogEntry::date)
        .containsExactly(LocalDate.of(2025, 1, 1));
  }

  @Test
  void aSurveyTellsOfLooksOnly() {
    Start start = start(bought("whimbrel"));
    Known survey = new Known(SURVEY, new HowKnown(From.SURVEY));
    Map<String, StartAnswer> all =
        start.questions().stream().collect(Collectors.toMap(StartQuestion::id, each -> survey));
    Set<String> looks =
        start.open().stream()
            .filter(Due::isLook)
            .map(due -> due.work().id())
            .collect(Collectors.toSet());
    assertThat(looks).containsAll(pages(start.entries(all)));
    Map<String, StartAnswer> ashore = start.surveyed(SURVEY);
    assertThat(pages(start.entries(ashore)))
        .contains("inspect-hull-ashore", "inspect-hoses-and-clips")
        .doesNotContain("inspect-standing-rigging", "inspect-bilge-pump", "renew-anodes", SAFETY)
        .doesNotContain(
            "launch-checks", "check-boat-papers", "check-first-aid-kit", "inspect-sails")
        .doesNotContain("inspect-mooring-tackle", "chalk-test-hatches", "test-cabin-alarms");
    assertThat(
            pages(
                start(bought("sanderling")).entries(start(bought("sanderling")).surveyed(SURVEY))))
        .contains("inspect-propeller")
        .doesNotContain("gas-system-check");
  }

  @Test
  void whatASurveyTellsOfIsNotLookedAtAgain() {
    Boat boat = bought("whimbrel");
    String launch = "launch-checks";
    LogEntry surveyed = LogEntry.known(SURVEY, launch, new HowKnown(From.SURVEY));
    LogEntry seen = LogEntry.known(SURVEY, launch, new HowKnown(From.SEEN));
    assertThat(start(boat, List.of(surveyed)).upkeep().all()).noneMatch(Due::isLookAgain);
    assertThat(start(boat, List.of(seen)).upkeep().all()).anyMatch(Due::isLookAgain);
  }

  @Test
  void nothingIsInventedWhereNothingIsKnown() {
    Start start = start(bought("whimbrel"));
    Map<String, StartAnswer> answers = new HashMap<>();
    start.questions().forEach(question -> answers.put(question.id(), StartAnswer.NOT_KNOWN));
    answers.put(SAFETY, StartAnswer.NOT_ABOARD);
    assertThat(start.entries(answers)).isEmpty();
  }

  @Test
  void whateverIsAnsweredIsNotAskedAgainAndTheRestIs() {
    Random random = new Random(31);
    for (int i = 0; i < 60; i++) {
      Boat boat = bought(workspace.boats().get(random.nextInt(6)).id());
      Start start = start(boat);
      Map<String, StartAnswer> answers = new HashMap<>();
      for (StartQuestion question : start.questions()) {
        if (random.nextBoolean()) {
          answers.put(question.id(), random.nextBoolean() ? said(2026) : StartAnswer.NOT_KNOWN);
        }
        question.works().stream()
            .filter(due -> random.nextInt(6) == 0)
            .forEach(due -> answers.put(due.work().id(), said(2026)));
      }
      List<LogEntry> lines = start.entries(answers);
      Set<String> told = pages(lines);
      assertThat(told).hasSameSizeAs(lines);
      Set<String> open =
          start(boat, lines).open().stream()
              .map(due -> due.work().id())
              .collect(Collectors.toSet());
      Set<String> before =
          start.open().stream().map(due -> due.work().id()).collect(Collectors.toSet());
      before.removeAll(told);
      assertThat(before).containsAll(open);
      assertThat(open).doesNotContainAnyElementsOf(told);
    }
  }

  @Test
  void howFarItHasComeIsTold() {
    Boat whimbrel = workspace.boat("whimbrel").orElseThrow();
    assertThat(start(whimbrel).standing()).isEqualTo(Standing.NOTHING);
    assertThat(start(whimbrel.with(List.of())).standing()).isEqualTo(Standing.MAYBE_BOUGHT);
    Boat boat = bought("whimbrel");
    assertThat(start(boat).standing()).isEqualTo(Standing.NOT_BEGUN);
    List<LogEntry> lines = start(boat).entries(Map.of(SAFETY, said(2026)));
    assertThat(start(boat, lines).standing()).isEqualTo(Standing.BEGUN);
    assertThat(start(boat, lines).upkeep().of(Group.OVERDUE))
        .allMatch(due -> due.all().stream().anyMatch(Due::isKnown));
  }

  @Test
  void workThatIsNotForEveryBoatNamesWhatItIsFor() {
    Start start = start(bought("whimbrel"));
    assertThat(start.equipment(workspace.library().procedure("inspect-petrol-tank").orElseThrow()))
        .extracting(each -> each.id())
        .contains("engine");
    assertThat(start.equipment(workspace.library().procedure("renew-flares").orElseThrow()))
        .isEmpty();
  }

  private static AnswerText reader() {
    return new AnswerText(bought("whimbrel"), ON);
  }

  @ParameterizedTest
  @CsvSource({
    "survey 12 Sep 2026, 2026-09-12, SURVEY, DAY",
    "survey 2026-09-12, 2026-09-12, SURVEY, DAY",
    "Bill May 2024, 2024-05-01, BILL, MONTH",
    "bill 2024-05, 2024-05-01, BILL, MONTH",
    "bill 5.2024, 2024-05-01, BILL, MONTH",
    "seen Sept 2025, 2025-09-01, SEEN, MONTH",
    "said   2023, 2023-01-01, SAID, YEAR",
    "said 2016, 2016-06-04, SAID, YEAR"
  })
  void answersAreReadAsPeopleWriteThem(String text, LocalDate day, From from, To to) {
    assertThat(reader().read(text).good()).contains(new Known(day, new HowKnown(from, to)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "?", "not known", "Not  known"})
  void notKnownIsAnAnswer(String text) {
    assertThat(reader().read(text).good()).contains(StartAnswer.NOT_KNOWN);
  }

  @ParameterizedTest
  @CsvSource({
    "perhaps 2023, is no answer",
    "said, there is no day",
    "said long ago, 'is no day, month or year'",
    "survey 2026-02-30, 'is no day, month or year'",
    "bill 2027, lies in the future",
    "bill Dec 2026, lies in the future",
    "said 2015, lies before she was new"
  })
  void whatIsNoAnswerIsRefusedWithWhatWouldBe(String text, String why) {
    Typed<StartAnswer> read = reader().read(text);
    assertThat(read.bad()).isPresent();
    assertThat(read.bad().get().wrong()).contains(why);
    assertThat(read.bad().get().right()).contains("write");
  }
}
