package limberboard.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.boat.RecordedCase;

/**
 * A cause that comes up on boats of one model and a few years of building: what their owners should
 * be told before it happens to them.
 *
 * <p>Among the cases of boats of a model built within three years, the share of each cause is
 * tested for a rise from season to season by the exact test of Cochran and Armitage ({@link
 * TrendTest}). What is tested more than once is judged the more strictly (Bonferroni): a cause is
 * listed when its chance of looking so by accident, times the number of tests, is no more than
 * {@value #ACCIDENT}. Of windows that overlap the clearest is listed.
 *
 * @param model model id
 * @param from first year of building
 * @param to last year of building
 * @param symptom symptom id
 * @param cause cause id
 * @param seasons season to how many cases of those boats have this cause
 * @param all season to how many cases those boats have
 * @param accident the chance of so clear a rise by accident, times the number of tests, at most 1
 * @param tests how many tests were made
 */
public record RisingCause(
    String model,
    int from,
    int to,
    String symptom,
    String cause,
    Map<Integer, Integer> seasons,
    Map<Integer, Integer> all,
    double accident,
    int tests) {
  /** A rise that has this chance of being an accident, or less, is told. */
  public static final double ACCIDENT = 0.05;

  private static final int YEARS = 3;
  private static final int FEWEST = 4;

  /** Copies the counts. */
  public RisingCause {
    seasons = Map.copyOf(seasons);
    all = Map.copyOf(all);
  }

  private record Window(String model, int from) {
    boolean holds(RecordedCase recorded) {
      int built = recorded.boat().built().orElse(0);
      return recorded.boat().model().equals(model) && built >= from && built < from + YEARS;
    }
  }

  /** Those that rise, the clearest first. */
  public static List<RisingCause> of(List<RecordedCase> cases) {
    List<RisingCause> tested = new ArrayList<>();
    cases.stream()
        .filter(each -> each.boat().built().isPresent() && each.provenCause().isPresent())
        .map(each -> new Window(each.boat().model(), each.boat().built().getAsInt()))
        .distinct()
        .sorted(Comparator.comparing(Window::model).thenComparing(Window::from))
        .forEach(window -> test(window, cases, tested));
    Map<List<String>, RisingCause> clearest = new LinkedHashMap<>();
    tested.stream()
        .map(each -> each.times(tested.size()))
        .filter(each -> each.accident() <= ACCIDENT)
        .sorted(Comparator.comparing(RisingCause::accident))
        .forEach(
            each ->
                clearest.putIfAbsent(List.of(each.model(), each.symptom(), each.cause()), each));
    return List.copyOf(clearest.values());
  }

  private static void test(Window window, List<RecordedCase> cases, List<RisingCause> tested) {
    List<RecordedCase> own =
        cases.stream()
            .filter(each -> window.holds(each) && each.provenCause().isPresent())
            .toList();
    Map<Integer, Integer> all = bySeason(own);
    own.stream()
        .collect(
            Collectors.groupingBy(
                each -> List.of(each.symptom(), each.provenCause().orElseThrow()),
                LinkedHashMap::new,
                Collectors.toList()))
        .forEach(
            (what, found) -> {
              if (found.size() >= FEWEST && all.size() > 1) {
                Map<Integer, Integer> seasons = bySeason(found);
                int[] years = all.keySet().stream().mapToInt(Integer::intValue).toArray();
                TrendTest trend = trend(years, seasons, all);
                tested.add(
                    new RisingCause(
                        window.model(),
                        window.from(),
                        window.from() + YEARS - 1,
                        what.get(0),
                        what.get(1),
                        seasons,
                        all,
                        trend.rising(),
                        1));
              }
            });
  }

  private static TrendTest trend(
      int[] years, Map<Integer, Integer> found, Map<Integer, Integer> all) {
    double[] scores = new double[years.length];
    int[] x = new int[years.length];
    int[] n = new int[years.length];
    for (int i = 0; i < years.length; i++) {
      scores[i] = years[i] - years[0];
      x[i] = found.getOrDefault(years[i], 0);
      n[i] = all.get(years[i]);
    }
    return new TrendTest(scores, x, n);
  }

  private static Map<Integer, Integer> bySeason(List<RecordedCase> cases) {
    Map<Integer, Integer> counts = new TreeMap<>();
    cases.forEach(each -> counts.merge(each.date().getYear(), 1, Integer::sum));
    return counts;
  }

  private RisingCause times(int number) {
    return new RisingCause(
        model, from, to, symptom, cause, seasons, all, Math.min(1, accident * number), number);
  }
}
