package limberboard.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import limberboard.boat.RecordedCase;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.value.BoatSystem;

/**
 * What the recorded cases are, counted: by model, season, system and cause. Open cases count as
 * cases; of a cause only those count that prove it. Immutable.
 *
 * @param cases how many cases there are
 * @param seasons the seasons in which there are cases, in order
 * @param rows the counts, by kind; within a kind the most frequent first, seasons in order
 * @param rising causes that come up
 */
public record CaseStatistics(
    int cases, List<Integer> seasons, List<Row> rows, List<RisingCause> rising) {
  /** The system of a case whose cause has no procedure. */
  public static final String NO_SYSTEM = "not known";

  /** Copies the lists. */
  public CaseStatistics {
    seasons = List.copyOf(seasons);
    rows = List.copyOf(rows);
    rising = List.copyOf(rising);
  }

  /** What is counted. */
  public enum By {
    /** By the boat's model. */
    MODEL,
    /** By the year of the case. */
    SEASON,
    /** By the system that the cause's mend belongs to. */
    SYSTEM,
    /** By proven cause; the id is symptom and cause with a blank between. */
    CAUSE
  }

  /**
   * A count.
   *
   * @param by what is counted
   * @param id model id, year, system, or symptom and cause
   * @param cases how many cases
   * @param seasons season to how many of them
   * @param minutes what they took in all
   * @param cost what they cost, materials and bills together, in the workspace's own money
   */
  public record Row(
      By by, String id, int cases, Map<Integer, Integer> seasons, Amount minutes, Amount cost) {
    /** Copies the seasons. */
    public Row {
      seasons = Map.copyOf(seasons);
    }

    /** How many cases a season has. */
    public int in(int season) {
      return seasons.getOrDefault(season, 0);
    }
  }

  /**
   * What cases took or cost. A case that does not say so is in neither figure.
   *
   * @param known how many cases say so
   * @param median their median; empty where none says so
   * @param total their sum, 0 where none says so
   */
  public record Amount(int known, OptionalDouble median, double total) {
    static Amount of(Stream<OptionalDouble> numbers) {
      double[] sorted = numbers.flatMapToDouble(OptionalDouble::stream).sorted().toArray();
      int n = sorted.length;
      return new Amount(
          n,
          n == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of((sorted[(n - 1) / 2] + sorted[n / 2]) / 2),
          DoubleStream.of(sorted).sum());
    }

    /** The sum; empty where no case says so. */
    public OptionalDouble inAll() {
      return known == 0 ? OptionalDouble.empty() : OptionalDouble.of(total);
    }
  }

  /** Counts cases. */
  public static CaseStatistics of(Library library, List<RecordedCase> cases) {
    List<Row> rows = new ArrayList<>();
    rows.addAll(rows(By.MODEL, cases, each -> Optional.of(each.boat().model())));
    rows.addAll(
        rows(By.SEASON, cases, each -> Optional.of(Integer.toString(each.date().getYear())))
            .stream()
            .sorted(Comparator.comparing(Row::id))
            .toList());
    rows.addAll(rows(By.SYSTEM, cases, each -> Optional.of(system(library, each))));
    rows.addAll(
        rows(
            By.CAUSE,
            cases,
            each -> each.provenCause().map(cause -> each.symptom() + " " + cause)));
    List<Integer> seasons =
        cases.stream().map(each -> each.date().getYear()).distinct().sorted().toList();
    return new CaseStatistics(cases.size(), seasons, rows, RisingCause.of(cases));
  }

  /** The rows of a kind. */
  public List<Row> by(By by) {
    return rows.stream().filter(row -> row.by() == by).toList();
  }

  private static String system(Library library, RecordedCase recorded) {
    return recorded
        .provenCause()
        .flatMap(
            cause ->
                library.symptom(recorded.symptom()).flatMap(page -> page.details().cause(cause)))
        .map(Cause::mend)
        .flatMap(library::procedure)
        .flatMap(mend -> mend.head().system())
        .map(BoatSystem::word)
        .orElse(NO_SYSTEM);
  }

  private static List<Row> rows(
      By by, List<RecordedCase> cases, Function<RecordedCase, Optional<String>> key) {
    Map<String, List<RecordedCase>> groups = new TreeMap<>();
    for (RecordedCase each : cases) {
      key.apply(each).ifPresent(id -> groups.computeIfAbsent(id, n -> new ArrayList<>()).add(each));
    }
    return groups.entrySet().stream()
        .map(group -> row(by, group.getKey(), group.getValue()))
        .sorted(Comparator.comparingInt(Row::cases).reversed().thenComparing(Row::id))
        .toList();
  }

  private static Row row(By by, String id, List<RecordedCase> cases) {
    Map<Integer, Integer> seasons = new TreeMap<>();
    cases.forEach(each -> seasons.merge(each.date().getYear(), 1, Integer::sum));
    return new Row(
        by,
        id,
        cases.size(),
        seasons,
        Amount.of(cases.stream().map(each -> each.end().minutes())),
        Amount.of(cases.stream().map(each -> each.end().cost())));
  }
}
