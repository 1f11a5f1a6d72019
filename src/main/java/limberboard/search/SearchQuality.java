package limberboard.search;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * How well search finds the symptom that a phrase of everyday speech means. Ranks are counted among
 * pages of all kinds together.
 *
 * @param outcomes what became of each phrase, in the file's order
 */
public record SearchQuality(List<Outcome> outcomes) {
  private static final int GOOD_PLACE = 3;
  private static final double PER_CENT = 100;

  /** Copies the outcomes. */
  public SearchQuality {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * A phrase whose meaning is known.
   *
   * @param number of the phrase in its file, from 1
   * @param voice who speaks like this
   * @param text what is said
   * @param symptom the id of the symptom that is meant
   */
  public record Phrase(int number, String voice, String text, String symptom) {}

  /**
   * What search made of a phrase.
   *
   * @param phrase the phrase
   * @param rank of the symptom meant, from 1; 0 when it was not among the first twenty
   * @param first ids of the three best hits
   */
  public record Outcome(Phrase phrase, int rank, List<String> first) {
    /** Copies the ids. */
    public Outcome {
      first = List.copyOf(first);
    }

    /** Whether the symptom meant was found as the first. */
    public boolean isFirst() {
      return rank == 1;
    }

    /** Whether the symptom meant was among the first three. */
    public boolean isInFirstThree() {
      return rank >= 1 && rank <= GOOD_PLACE;
    }
  }

  /**
   * Reads phrases: RFC 4180 with the header {@code voice,phrase,symptom}.
   *
   * @throws IOException when the file cannot be read or lacks one of the columns
   */
  public static List<Phrase> read(Path file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<Phrase> phrases = new ArrayList<>();
    try (CSVParser parser =
        CSVParser.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8), format)) {
      for (CSVRecord line : parser) {
        phrases.add(
            new Phrase(
                (int) line.getRecordNumber(),
                line.get("voice"),
                line.get("phrase"),
                line.get("symptom")));
      }
    } catch (IllegalArgumentException e) {
      throw new IOException(
          file + " is no file of phrases; its first line should be voice,phrase,symptom", e);
    }
    return phrases;
  }

  /** Asks an index every phrase. */
  public static SearchQuality measure(SearchIndex index, List<Phrase> phrases) throws IOException {
    List<Outcome> outcomes = new ArrayList<>();
    for (Phrase phrase : phrases) {
      List<String> ids =
          index.find(SearchQuery.of(phrase.text())).hits().stream().map(Hit::id).toList();
      outcomes.add(
          new Outcome(
              phrase,
              ids.indexOf(phrase.symptom()) + 1,
              ids.subList(0, Math.min(GOOD_PLACE, ids.size()))));
    }
    return new SearchQuality(outcomes);
  }

  /** The same for some of the phrases. */
  public SearchQuality of(Predicate<Phrase> wanted) {
    return new SearchQuality(
        outcomes.stream().filter(outcome -> wanted.test(outcome.phrase())).toList());
  }

  /** The share of phrases whose symptom came first, 0 to 1; 0 without phrases. */
  public double firstShare() {
    return share(Outcome::isFirst);
  }

  /** The share of phrases whose symptom came among the first three, 0 to 1; 0 without phrases. */
  public double firstThreeShare() {
    return share(Outcome::isInFirstThree);
  }

  private double share(Predicate<Outcome> good) {
    long many = outcomes.stream().filter(good).count();
    return outcomes.isEmpty() ? 0 : (double) many / outcomes.size();
  }

  /** A table of shares by voice, for odd and even phrases and for all, and every miss. */
  public String text() {
    Map<String, Predicate<Phrase>> rows = new LinkedHashMap<>();
    outcomes.stream()
        .map(outcome -> outcome.phrase().voice())
        .distinct()
        .forEach(voice -> rows.put(voice, phrase -> phrase.voice().equals(voice)));
    rows.put("odd lines", phrase -> phrase.number() % 2 == 1);
    rows.put("even lines", phrase -> phrase.number() % 2 == 0);
    rows.put("all", phrase -> true);
    StringBuilder text =
        new StringBuilder(
            String.format(
                Locale.ROOT, "%-18s %8s %7s %12s%n", "voice", "phrases", "first", "first three"));
    rows.forEach((name, wanted) -> text.append(of(wanted).row(name)));
    outcomes.stream()
        .filter(outcome -> !outcome.isFirst())
        .forEach(outcome -> text.append(miss(outcome)));
    return text.toString();
  }

  private String row(String name) {
    return String.format(
        Locale.ROOT,
        "%-18s %8d %5.0f %% %10.0f %%%n",
        name,
        outcomes.size(),
        firstShare() * PER_CENT,
        firstThreeShare() * PER_CENT);
  }

  private static String miss(Outcome outcome) {
    Phrase phrase = outcome.phrase();
    return String.format(
        Locale.ROOT,
        "%n%d (%s) %s%n    meant %s, found %s: %s%n",
        phrase.number(),
        phrase.voice(),
        phrase.text(),
        phrase.symptom(),
        outcome.rank() == 0 ? "nowhere" : "as number " + outcome.rank(),
        String.join(", ", outcome.first()));
  }
}
