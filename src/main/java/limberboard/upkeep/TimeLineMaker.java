package limberboard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.BoatSystem;
import limberboard.upkeep.TimeLine.Group;
import limberboard.upkeep.TimeLine.Row;
import limberboard.upkeep.TimeLine.Run;
import limberboard.upkeep.TimeLine.Season;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;

/** Puts a forecast on a time line. For one time line, on one thread. */
final class TimeLineMaker {
  /** Work that comes so often in a season is shown as a run. */
  private static final int OFTEN = 4;

  /** Room behind the last haul-out, so that work of laying up is seen. */
  private static final int DAYS_AFTER = 25;

  private final Upkeep upkeep;
  private final List<AfloatSeason> seasons = new ArrayList<>();
  private final List<Planned> planned;
  private final Map<WorkId, Due> due;
  private final Map<String, LocalDate> firstDays;

  TimeLineMaker(Upkeep upkeep, int count) {
    this.upkeep = upkeep;
    for (int i = 0; i < count; i++) {
      seasons.add(upkeep.seasons().season(upkeep.thisSeason().year() + i));
    }
    this.planned = upkeep.forecast(count);
    this.due =
        upkeep.all().stream()
            .collect(Collectors.toMap(Due::which, Function.identity(), (a, b) -> a));
    this.firstDays =
        planned.stream()
            .collect(
                Collectors.toMap(
                    TimeLineMaker::base, Planned::day, (a, b) -> a.isBefore(b) ? a : b));
  }

  TimeLine make() {
    LocalDate on = upkeep.fitting().on();
    AfloatSeason last = seasons.get(seasons.size() - 1);
    LocalDate lastDay =
        planned.stream().map(Planned::day).max(Comparator.naturalOrder()).orElse(last.to());
    LocalDate end = lastDay.isAfter(last.to()) ? lastDay : last.to();
    return new TimeLine(
        upkeep.fitting().boat().name(),
        on,
        on.withDayOfMonth(1),
        end.plusDays(DAYS_AFTER),
        seasons.stream().map(this::season).toList(),
        groups(),
        later(),
        cautions());
  }

  /** The titles of the cautions of all work that is shown. */
  private List<String> cautions() {
    return Stream.concat(
            planned.stream().map(Planned::work),
            upkeep.of(Due.Group.UNKNOWN).stream().map(Due::work))
        .flatMap(work -> upkeep.cautions(work).stream())
        .map(WorkCaution::title)
        .distinct()
        .toList();
  }

  private Season season(AfloatSeason season) {
    List<Planned> work = planned.stream().filter(each -> seasonOf(each) == season.year()).toList();
    return new Season(
        season,
        upkeep.seasons().season(season.year() - 1).to().plusDays(1),
        season.to(),
        work.size(),
        work.stream().mapToInt(Planned::ownerMinutes).sum());
  }

  /** What should have been done earlier is done in the first of the seasons. */
  private int seasonOf(Planned each) {
    return Math.max(each.season(), seasons.get(0).year());
  }

  private List<Group> groups() {
    Map<BoatSystem, List<Row>> rows = new EnumMap<>(BoatSystem.class);
    Map<WorkId, List<Planned>> byWork =
        planned.stream()
            .sorted(this::byFirstDay)
            .collect(
                Collectors.groupingBy(Planned::which, LinkedHashMap::new, Collectors.toList()));
    byWork.forEach((which, all) -> add(rows, all.get(0).work(), row(which, all)));
    upkeep.of(Due.Group.UNKNOWN).stream()
        .filter(unknown -> !byWork.containsKey(unknown.which()))
        .forEach(unknown -> add(rows, unknown.work(), unknown(unknown)));
    List<Group> groups = new ArrayList<>();
    rows.forEach((system, list) -> groups.add(new Group(Sentences.capital(system.spoken()), list)));
    return groups;
  }

  /** By the day on which the work first comes; a look again follows its work. */
  private int byFirstDay(Planned one, Planned other) {
    return Comparator.<Planned, LocalDate>comparing(each -> firstDays.get(base(each)))
        .thenComparing(TimeLineMaker::base)
        .thenComparing(Planned::id)
        .thenComparing(Planned::day)
        .compare(one, other);
  }

  private static String base(Planned each) {
    return each.which().procedure();
  }

  private static void add(Map<BoatSystem, List<Row>> rows, Page<Procedure> work, Row row) {
    BoatSystem system = work.head().system().orElse(BoatSystem.HULL);
    rows.computeIfAbsent(system, key -> new ArrayList<>()).add(row);
  }

  private Row row(WorkId which, List<Planned> all) {
    Planned first = all.get(0);
    Map<Integer, List<Planned>> bySeason =
        all.stream()
            .collect(Collectors.groupingBy(this::seasonOf, TreeMap::new, Collectors.toList()));
    boolean often = bySeason.values().stream().anyMatch(list -> list.size() >= OFTEN);
    boolean overdue =
        Optional.ofNullable(due.get(which))
            .filter(each -> each.isOver(upkeep.fitting().on()))
            .isPresent();
    List<String> notes = new ArrayList<>();
    if (overdue) {
      notes.add("overdue");
    } else if (!isKnown(which)) {
      notes.add("not known: look first");
    }
    if (often) {
      notes.add(rhythm(first, bySeason));
    }
    return new Row(
        which,
        first.work().id(),
        first.title(),
        String.join(", ", notes),
        overdue,
        often ? List.of() : all.stream().map(Planned::day).toList(),
        often ? runs(bySeason) : List.of());
  }

  private boolean isKnown(WorkId which) {
    return Optional.ofNullable(due.get(which)).filter(each -> !each.isKnown()).isEmpty();
  }

  private List<Run> runs(Map<Integer, List<Planned>> bySeason) {
    List<Run> runs = new ArrayList<>();
    bySeason.forEach(
        (year, list) ->
            runs.add(
                new Run(
                    upkeep.seasons().season(year).label(),
                    list.get(0).day(),
                    list.get(list.size() - 1).day(),
                    list.size())));
    return runs;
  }

  /** How often, in words: {@code every month afloat}. */
  private String rhythm(Planned first, Map<Integer, List<Planned>> bySeason) {
    int most = bySeason.values().stream().mapToInt(List::size).max().orElse(0);
    String often =
        Optional.ofNullable(due.get(first.which())).stream()
            .flatMap(each -> each.limits().stream())
            .filter(Limit.Calendar.class::isInstance)
            .map(limit -> TimeWords.every(((Limit.Calendar) limit).every()))
            .findFirst()
            .orElse("about " + most + " times a season");
    return first.phase().isPresent() ? often + " " + PhaseWords.brief(first.phase().get()) : often;
  }

  private static Row unknown(Due each) {
    return new Row(
        each.which(),
        each.work().id(),
        each.title(),
        "the log does not tell",
        false,
        List.of(),
        List.of());
  }

  private int later() {
    long shown = planned.stream().map(Planned::which).distinct().count();
    long known = upkeep.all().stream().filter(each -> each.runsOut().isPresent()).count();
    return (int) Math.max(0, known - shown);
  }
}
