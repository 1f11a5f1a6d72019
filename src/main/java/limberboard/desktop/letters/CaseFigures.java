package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Workspace;
import limberboard.cases.CaseStatistics;
import limberboard.cases.CaseStatistics.By;
import limberboard.cases.CaseStatistics.Row;
import limberboard.cases.StatisticsWords;
import limberboard.words.CountWords;

/**
 * What recorded cases add up to, in words and counts. Immutable.
 *
 * @param heading how many cases there are, of which seasons
 * @param seasons the seasons
 * @param parts by system, season and model, and the most frequent causes
 * @param rising causes that come up, each in a sentence
 */
record CaseFigures(String heading, List<Integer> seasons, List<Part> parts, List<String> rising) {
  private static final int MOST_CAUSES = 10;

  /** Lines of one kind. */
  record Part(String title, List<Line> lines) {}

  /**
   * A line.
   *
   * @param title what is counted
   * @param words how many, how long they took and what they cost
   * @param counts how many in each season
   */
  record Line(String title, String words, List<Integer> counts) {
    /** Everything as one sentence, for somebody who listens to it. */
    String spoken(List<Integer> seasons) {
      List<String> each = new ArrayList<>();
      for (int i = 0; i < seasons.size(); i++) {
        each.add(seasons.get(i) + ": " + counts.get(i));
      }
      return title + ", " + words + " By season: " + String.join(", ", each) + ".";
    }
  }

  /** Counts the cases of a workspace; not on the event thread. */
  static CaseFigures of(Workspace workspace) {
    CaseStatistics counted = CaseStatistics.of(workspace.library(), workspace.cases());
    List<Integer> seasons = counted.seasons();
    String heading =
        seasons.isEmpty()
            ? "There are no recorded cases yet."
            : CountWords.of(counted.cases(), "recorded case")
                + ", "
                + seasons.get(0)
                + " to "
                + seasons.get(seasons.size() - 1)
                + ". One bar a season. Cost is what cases hold of materials and"
                + " bills, in the yard's own money.";
    StatisticsWords names = new StatisticsWords(workspace.library());
    List<Part> parts = new ArrayList<>();
    parts.add(part("By system", By.SYSTEM, names, counted));
    parts.add(part("By season", By.SEASON, names, counted));
    parts.add(part("By model", By.MODEL, names, counted));
    parts.add(part("The most frequent causes", By.CAUSE, names, counted));
    parts.removeIf(part -> part.lines().isEmpty());
    return new CaseFigures(
        heading, seasons, parts, counted.rising().stream().map(names::of).toList());
  }

  private static Part part(String title, By by, StatisticsWords names, CaseStatistics counted) {
    return new Part(
        title,
        counted.by(by).stream()
            .limit(by == By.CAUSE ? MOST_CAUSES : Integer.MAX_VALUE)
            .map(
                row ->
                    new Line(
                        names.of(row),
                        words(row),
                        counted.seasons().stream().map(row::in).toList()))
            .toList());
  }

  private static String words(Row row) {
    return CountWords.of(row.cases(), "case")
        + ", "
        + StatisticsWords.took(row)
        + "; "
        + StatisticsWords.cost(row)
        + ".";
  }
}
