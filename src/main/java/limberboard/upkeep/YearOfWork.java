package limberboard.upkeep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Need;

/**
 * What an average year of a boat asks of her owner: the forecast of the coming seasons, if all is
 * done on the day it is planned for, divided by their number. The season that is on is left out,
 * since what was not logged makes it fuller than others. Immutable.
 *
 * @param seasons how many seasons were averaged, at least 1
 * @param lines the work, most hours first; what is done with a round is in the round's line
 * @param uncounted work that is not in it, because its interval only counts something that the log
 *     does not tell, such as engine hours
 */
public record YearOfWork(int seasons, List<Line> lines, List<Page<Procedure>> uncounted) {
  /** Copies the lists. */
  public YearOfWork {
    lines = List.copyOf(lines);
    uncounted = List.copyOf(uncounted);
  }

  /**
   * One line of the year.
   *
   * @param work the page; of a look again, the one that it is after
   * @param need how much it is needed
   * @param appointment whether somebody else does it, so that only the owner's own time counts
   * @param times how often it comes in a year; of a round, how often the round comes
   * @param minutes of the owner in a year, practised, with all that is done with it; opening what
   *     is in the way is not counted
   */
  public record Line(
      Page<Procedure> work, Need need, boolean appointment, double times, double minutes) {}

  /**
   * The average year.
   *
   * @param upkeep the boat on the day asked about
   * @param seasons how many seasons to average, at least 1
   */
  public static YearOfWork of(Upkeep upkeep, int seasons) {
    int first = upkeep.thisSeason().year() + 1;
    Map<String, List<Planned>> byLine = new LinkedHashMap<>();
    upkeep.forecast(seasons + 1).stream()
        .filter(each -> each.season() >= first)
        .forEach(each -> byLine.computeIfAbsent(line(each), id -> new ArrayList<>()).add(each));
    List<Line> lines = new ArrayList<>();
    byLine.forEach((id, all) -> lines.add(line(id, all, seasons)));
    lines.sort(
        Comparator.comparing(Line::need)
            .thenComparing(Comparator.comparing(Line::minutes).reversed())
            .thenComparing(each -> each.work().id()));
    return new YearOfWork(
        seasons, lines, upkeep.of(Due.Group.UNKNOWN).stream().map(Due::work).toList());
  }

  private static String line(Planned each) {
    return each.round().map(InRound::round).orElse(each.which().procedure());
  }

  private static Line line(String id, List<Planned> all, int seasons) {
    List<Planned> own = all.stream().filter(each -> each.which().procedure().equals(id)).toList();
    Planned of = own.isEmpty() ? all.get(0) : own.get(0);
    long times = own.stream().filter(each -> each.after().isEmpty()).count();
    Need need = all.stream().map(Planned::need).min(Comparator.naturalOrder()).orElseThrow();
    return new Line(
        of.after().orElse(of.work()),
        need,
        OwnerTime.appointment(of.work().details()).isPresent(),
        (double) times / seasons,
        all.stream().mapToInt(Planned::ownerMinutes).sum() / (double) seasons);
  }

  /** Minutes of a year of what is needed so much, practised. */
  public double minutes(Need need) {
    return lines.stream().filter(line -> line.need() == need).mapToDouble(Line::minutes).sum();
  }

  /**
   * How many lines of what is needed so much a year has on average: what comes every few years
   * counts in part, what comes often counts once.
   */
  public double count(Need need) {
    return lines.stream()
        .filter(line -> line.need() == need)
        .mapToDouble(line -> Math.min(1, line.times()))
        .sum();
  }
}
