package limberboard.cases;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.cases.CaseStatistics.Amount;
import limberboard.cases.CaseStatistics.Row;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Page;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * Statistics in words, the same in every output. Immutable.
 *
 * @param library has the titles
 */
public record StatisticsWords(Library library) {
  /** What stands where no case says how long it took or what it cost. */
  public static final String NOT_RECORDED = "not recorded";

  private static final String GAP = " ";

  /** What a row is called, such as the title of a cause. */
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

  /** How long the cases of a row took, as far as they say so. */
  public static String took(Row row) {
    return row.minutes().known() == 0
        ? "time " + NOT_RECORDED
        : "median "
            + time(row.minutes().median())
            + ", "
            + time(row.minutes().inAll())
            + " in all"
            + said(row.minutes(), row);
  }

  /** What the cases of a row cost, as far as they say so. */
  public static String cost(Row row) {
    return row.cost().known() == 0
        ? "cost " + NOT_RECORDED
        : "cost median "
            + money(row.cost().median())
            + ", "
            + money(row.cost().inAll())
            + " in all"
            + said(row.cost(), row);
  }

  private static String said(Amount amount, Row row) {
    return amount.known() == row.cases()
        ? ""
        : " (" + NOT_RECORDED + " of " + CountWords.of(row.cases() - amount.known(), "case") + ")";
  }

  private static String time(OptionalDouble minutes) {
    return Minutes.words(minutes.orElseThrow());
  }

  private static String money(OptionalDouble cost) {
    return Long.toString(Math.round(cost.orElseThrow()));
  }

  /** What a rising cause is, in a sentence. */
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
        + " of their cases. So clear a rise comes by accident "
        + chance(rising.accident())
        + " (exact Cochran–Armitage test, "
        + rising.tests()
        + " tests allowed for).";
  }

  private static String chance(double accident) {
    return accident < 0.0005
        ? "less than once in 2000 times"
        : "about once in " + Math.round(1 / accident) + " times";
  }

  private String model(String id) {
    return library.model(id).map(Page::title).orElseGet(() -> Sentences.spoken(id));
  }

  private String cause(String symptom, String cause) {
    String title =
        library.symptom(symptom).map(Page::title).orElseGet(() -> Sentences.spoken(symptom));
    String what =
        library
            .symptom(symptom)
            .flatMap(page -> page.details().cause(cause))
            .map(Cause::title)
            .orElseGet(() -> Sentences.spoken(cause));
    return title + ": " + Sentences.lowered(what);
  }
}
