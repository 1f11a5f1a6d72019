package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import limberboard.letters.recognise.Recognition.GivenAnswer;

/**
 * How well letters are recognised, beside what a person says they should give.
 *
 * @param outcomes what became of each letter
 */
public record LetterQuality(List<Outcome> outcomes) {
  static final String FIRST = "right symptom first";
  static final String FIRST_THREE = "right symptom in the first three";
  static final String NONE_OF_UNKNOWN = "none said of a fault that the library does not cover";
  static final String NONE_OF_NO_FAULT = "none said of what is no fault";
  static final String NONE_OF_KNOWN = "none said of a fault that it does cover";
  static final String BOAT = "right boat, where one is named";
  static final String BOAT_UNASKED = "a boat said, where none is named";
  static final String URGENT = "urgent ones called urgent";
  static final String URGENT_WRONGLY = "of those called urgent, wrongly";
  static final String ANSWERS_RIGHT = "answers read that are given";
  static final String ANSWERS_READ = "answers given that are read";
  private static final int GOOD_PLACE = 3;

  /** Copies the list. */
  public LetterQuality {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * What became of a letter.
   *
   * @param letter the letter, with what it should give
   * @param given what was recognised in it
   * @param yardstick the symptoms that naive Bayes says instead, the likeliest first; none where it
   *     says that no symptom fits
   */
  public record Outcome(RecordedLetter letter, Recognition given, List<String> yardstick) {
    private List<String> ids() {
      return given.symptoms().stream().map(Recognition.Suspect::id).toList();
    }

    private boolean covered() {
      return !letter.expected().symptoms().isEmpty();
    }

    private boolean among(int places) {
      return among(ids(), places);
    }

    private boolean among(List<String> said, int places) {
      List<String> first = said.stream().limit(places).toList();
      return letter.expected().symptoms().stream().anyMatch(first::contains);
    }

    private boolean namesBoat() {
      return letter.expected().boat().isPresent();
    }

    private Optional<String> boat() {
      return given.boat().map(Recognised::id);
    }
  }

  /** Tries a recogniser, and the yardstick, on letters. */
  static LetterQuality of(
      List<RecordedLetter> letters,
      Function<RecordedLetter, Recogniser> recogniser,
      Function<RecordedLetter, List<String>> yardstick) {
    List<Outcome> outcomes = new ArrayList<>();
    for (RecordedLetter letter : letters) {
      outcomes.add(
          new Outcome(
              letter,
              recogniser.apply(letter).recognise(letter.letter()),
              List.copyOf(yardstick.apply(letter))));
    }
    return new LetterQuality(outcomes);
  }

  /**
   * How many of some letters something is so of.
   *
   * @param what what
   * @param good how many
   * @param all of how many
   */
  record Share(String what, long good, long all) {
    /** 0 to 1; 0 of none. */
    double of() {
      return all == 0 ? 0 : (double) good / all;
    }

    String line() {
      String share = all == 0 ? "-" : String.format(Locale.ROOT, "%.1f %%", 100.0 * good / all);
      return String.format(Locale.ROOT, "%-62s %4d of %4d  %s%n", what, good, all, share);
    }
  }

  private Share share(String what, Predicate<Outcome> of, Predicate<Outcome> good) {
    List<Outcome> all = outcomes.stream().filter(of).toList();
    return new Share(what, all.stream().filter(good).count(), all.size());
  }

  private List<Share> answerShares() {
    long given = 0;
    long right = 0;
    long wanted = 0;
    for (Outcome outcome : outcomes) {
      if (outcome.letter().expected().answers().isEmpty()) {
        continue;
      }
      Map<String, Map<String, String>> all = outcome.letter().expected().answers().get();
      wanted += all.values().stream().mapToInt(Map::size).sum();
      for (Map.Entry<String, List<GivenAnswer>> each : outcome.given().answers().entrySet()) {
        Map<String, String> told = all.getOrDefault(each.getKey(), Map.of());
        given += each.getValue().size();
        right +=
            each.getValue().stream().filter(a -> a.answer().equals(told.get(a.check()))).count();
      }
    }
    return List.of(new Share(ANSWERS_RIGHT, right, given), new Share(ANSWERS_READ, right, wanted));
  }

  /** All figures, in the order in which they are told. */
  List<Share> shares() {
    List<Share> all = new ArrayList<>(letterShares());
    all.addAll(answerShares());
    all.addAll(yardstickShares());
    return all;
  }

  private List<Share> yardstickShares() {
    Predicate<Outcome> covered = Outcome::covered;
    Predicate<Outcome> unknown = o -> o.letter().expected().fault() && !o.covered();
    return List.of(
        share("by naive Bayes: " + FIRST, covered, o -> o.among(o.yardstick(), 1)),
        share("by naive Bayes: " + FIRST_THREE, covered, o -> o.among(o.yardstick(), GOOD_PLACE)),
        share("by naive Bayes: " + NONE_OF_UNKNOWN, unknown, o -> o.yardstick().isEmpty()),
        share("by naive Bayes: " + NONE_OF_KNOWN, covered, o -> o.yardstick().isEmpty()));
  }

  /** How well the chances hold that are said of the symptom that comes first. */
  ChanceQuality calibration() {
    return ChanceQuality.of(
        outcomes.stream()
            .filter(outcome -> !outcome.given().symptoms().isEmpty())
            .map(
                outcome ->
                    new ChanceQuality.Said(
                        outcome.given().symptoms().get(0).chance(), outcome.among(1)))
            .toList());
  }

  private List<Share> letterShares() {
    Predicate<Outcome> covered = Outcome::covered;
    Predicate<Outcome> fault = o -> o.letter().expected().fault();
    Predicate<Outcome> urgent = o -> o.letter().expected().urgent();
    Predicate<Outcome> called = o -> o.given().urgent().isPresent();
    return List.of(
        share(FIRST, covered, o -> o.among(1)),
        share(FIRST_THREE, covered, o -> o.among(GOOD_PLACE)),
        share("of those said first, right", o -> !o.ids().isEmpty(), o -> o.among(1)),
        share(
            "both of two faults in the first three",
            o -> o.letter().expected().symptoms().size() > 1,
            o ->
                o.ids().stream()
                    .limit(GOOD_PLACE)
                    .toList()
                    .containsAll(o.letter().expected().symptoms())),
        share(NONE_OF_UNKNOWN, fault.and(covered.negate()), o -> o.ids().isEmpty()),
        share(NONE_OF_NO_FAULT, fault.negate(), o -> o.ids().isEmpty()),
        share(NONE_OF_KNOWN, covered, o -> o.ids().isEmpty()),
        share(
            "fault or other told right",
            o -> true,
            o -> o.given().fault() == o.letter().expected().fault()),
        share(BOAT, Outcome::namesBoat, o -> o.boat().equals(o.letter().expected().boat())),
        share(BOAT_UNASKED, o -> !o.namesBoat(), o -> o.boat().isPresent()),
        share(
            "wrong boat said",
            Outcome::namesBoat,
            o -> o.boat().isPresent() && !o.boat().equals(o.letter().expected().boat())),
        share(
            "right model",
            o -> o.letter().expected().model().isPresent(),
            o -> o.given().model().map(Recognised::id).equals(o.letter().expected().model())),
        share(URGENT, urgent, called),
        share(URGENT_WRONGLY, called, urgent.negate()));
  }

  /** The figures, one a line. */
  public String text() {
    StringBuilder text = new StringBuilder();
    shares().forEach(share -> text.append(share.line()));
    text.append(calibration().line());
    return text.toString();
  }

  /** The letters that were not recognised rightly, with what was wrong. */
  public String misses() {
    StringBuilder text = new StringBuilder();
    for (Outcome outcome : outcomes) {
      List<String> wrong = wrong(outcome);
      if (!wrong.isEmpty()) {
        text.append(outcome.letter().name()).append('\n');
        wrong.forEach(each -> text.append("    ").append(each).append('\n'));
      }
    }
    return text.toString();
  }

  private static List<String> wrong(Outcome outcome) {
    Expected expected = outcome.letter().expected();
    Recognition given = outcome.given();
    List<String> wrong = new ArrayList<>();
    boolean first = outcome.covered() ? outcome.among(1) : outcome.ids().isEmpty();
    if (!first || !outcome.ids().containsAll(expected.symptoms())) {
      wrong.add("symptoms: " + expected.symptoms() + ", given " + told(given));
    }
    add(wrong, "boat", expected.boat(), outcome.boat());
    add(wrong, "model", expected.model(), given.model().map(Recognised::id));
    add(wrong, "urgent", expected.urgent(), given.urgent().isPresent());
    add(wrong, "fault", expected.fault(), given.fault());
    expected.answers().ifPresent(told -> addAnswers(wrong, told, given));
    return wrong;
  }

  private static void addAnswers(
      List<String> wrong, Map<String, Map<String, String>> expected, Recognition given) {
    for (Map.Entry<String, List<GivenAnswer>> each : given.answers().entrySet()) {
      Map<String, String> told = expected.getOrDefault(each.getKey(), Map.of());
      for (GivenAnswer answer : each.getValue()) {
        String right = told.getOrDefault(answer.check(), "not told");
        if (!right.equals(answer.answer())) {
          wrong.add(
              "answer of %s, %s: %s, given %s [%s]"
                  .formatted(
                      each.getKey(),
                      answer.check(),
                      right,
                      answer.answer(),
                      answer.words().written()));
        }
      }
    }
    for (Map.Entry<String, Map<String, String>> each : expected.entrySet()) {
      List<String> read =
          given.answers().getOrDefault(each.getKey(), List.of()).stream()
              .map(GivenAnswer::check)
              .toList();
      each.getValue()
          .forEach(
              (check, told) -> {
                if (!read.contains(check)) {
                  wrong.add("answer of %s, %s: %s, not read".formatted(each.getKey(), check, told));
                }
              });
    }
  }

  private static void add(List<String> wrong, String what, Object expected, Object given) {
    if (!expected.equals(given)) {
      wrong.add(what + ": " + expected + ", given " + given);
    }
  }

  private static String told(Recognition given) {
    return given.symptoms().stream()
        .limit(GOOD_PLACE)
        .map(
            suspect ->
                suspect.id()
                    + String.format(Locale.ROOT, " %.2f ", suspect.chance())
                    + suspect.words().stream().map(Recognition.Words::written).toList())
        .toList()
        .toString();
  }
}
