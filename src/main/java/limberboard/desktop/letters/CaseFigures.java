package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.boat.Workspace;
import limberboard.cases.CaseStatistics;
import limberboard.cases.CaseStatistics.By;
import limberboard.cases.CaseStatistics.Row;
import limberboard.cases.RisingCause;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Page;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * What recorded cases add up to, in words and counts. Immutable.
 *
 * @param heading how many cases there are, of which seasons
 * @param seasons the seasons
 * @param parts by system, by model, and the most frequent causes
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
   * @param words how many, and how long they took
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
                + ". One bar a season.";
    List<Part> parts = new ArrayList<>();
    parts.add(part("By system", By.SYSTEM, workspace.library(), counted));
    parts.add(part("By model", By.MODEL, workspace.library(), counted));
    parts.add(part("The most frequent causes", By.CAUSE, workspace.library(), counted));
    parts.removeIf(part -> part.lines().isEmpty());
    return new CaseFigures(
        heading,
        seasons,
        parts,
        counted.rising().stream().map(each -> rising(each, workspace.library())).toList());
  }

  private static Part part(String title, By by, Library library, CaseStatistics counted) {
    return new Part(
        title,
        counted.by(by).stream()
            .limit(by == By.CAUSE ? MOST_CAUSES : Integer.MAX_VALUE)
            .map(
                row ->
                    new Line(
                        title(row, library),
                        words(row),
                        counted.seasons().stream().map(row::in).toList()))
            .toList());
  }

  private static String title(Row row, Library library) {
    return switch (row.by()) {
      case MODEL -> model(row.id(), library);
      case SEASON -> row.id();
      case SYSTEM -> Sentences.capital(Sentences.spoken(row.id()));
      case CAUSE -> {
        String[] parts = row.id().split(" ", 2);
        yield cause(parts[0], parts[1], library);
      }
    };
  }

  private static String words(Row row) {
    String median =
        row.minutes().isPresent() ? ", median " + Minutes.words(row.minutes().getAsDouble()) : "";
    return CountWords.of(row.cases(), "case") + median + ".";
  }

  private static String model(String id, Library library) {
    return library.model(id).map(Page::title).orElseGet(() -> Sentences.spoken(id));
  }

  private static String cause(String symptom, String cause, Library library) {
    String title = library.symptom(symptom).map(Page::title).orElse(Sentences.spoken(symptom));
    String what =
        library
            .symptom(symptom)
            .flatMap(page -> page.details().cause(cause))
            .map(Cause::title)
            .orElseGet(() -> Sentences.spoken(cause));
    return title + ": " + Sentences.lowered(what);
  }

  private static String rising(RisingCause rising, Library library) {
    Map<Integer, Integer> all = new TreeMap<>(rising.all());
    String seasons =
        all.entrySet().stream()
            .map(
                season ->
                    rising.seasons().getOrDefault(season.getKey(), 0)
                        + " of "
                        + season.getValue()
                        + " in "
                        + season.getKey())
            .collect(Collectors.joining(", "));
    long oneIn = Math.round(1 / Math.max(rising.accident(), 0.0005));
    return model(rising.model(), library)
        + " built "
        + rising.from()
        + " to "
        + rising.to()
        + ": "
        + cause(rising.symptom(), rising.cause(), library)
        + ". "
        + seasons
        + " of their cases. By accident so clear a rise comes about once in "
        + oneIn
        + " times.";
  }
}
