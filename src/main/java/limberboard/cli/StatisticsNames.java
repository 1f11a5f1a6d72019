package limberboard.cli;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.cases.CaseStatistics.Row;
import limberboard.cases.RisingCause;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.print.drawing.StatisticsDrawing;
import limberboard.words.Sentences;

/** What the rows of statistics are called. */
record StatisticsNames(Library library) implements StatisticsDrawing.Names {
  private static final String GAP = " ";

  @Override
  public String of(Row row) {
    return switch (row.by()) {
      case MODEL -> model(row.id());
      case SEASON -> row.id();
      case SYSTEM -> Sentences.capital(Sentences.spoken(row.id()));
      case CAUSE -> {
        String[] parts = row.id().split(GAP, 2);
        yield cause(parts[0], parts[1]);
      }
    };
  }

  @Override
  public String of(RisingCause rising) {
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
    return model(rising.model())
        + " built "
        + rising.from()
        + " to "
        + rising.to()
        + ": "
        + cause(rising.symptom(), rising.cause())
        + ": "
        + seasons
        + " of their cases. So clear a rise comes by accident in "
        + chance(rising.accident())
        + " (exact Cochran–Armitage test, "
        + rising.tests()
        + " tests allowed for).";
  }

  private static String chance(double accident) {
    return accident < 0.0005
        ? "less than one case in 2,000"
        : "one case in " + Math.round(1 / accident);
  }

  private String model(String id) {
    return library.model(id).map(Page::title).orElseGet(() -> Sentences.spoken(id));
  }

  private String cause(String symptom, String cause) {
    String title = library.symptom(symptom).map(Page::title).orElse(symptom);
    String what =
        library
            .symptom(symptom)
            .flatMap(page -> page.details().cause(cause))
            .map(Cause::title)
            .orElse(cause.equals(Symptom.SOMETHING_ELSE) ? "something else" : cause);
    return title + ": " + Sentences.lowered(what);
  }
}
