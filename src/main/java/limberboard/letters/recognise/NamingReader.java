package limberboard.letters.recognise;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.TextRegression.Example;

/**
 * Says which of the boats that a letter names it is about, if any: learnt from lines in which
 * people name boats, and from recorded letters: from what stands around each name, and from the
 * words of the whole letter. The lines of pairs share their words on purpose, so the words of whole
 * letters are learnt without them. Who tells of a fault tells it mostly of the boat that is named.
 * Where it tells of one a chance of 0.4 is enough, where it does not, as an advertisement, 0.7, and
 * 0.9 where the letter tells of another model than hers. A boat that a recorded letter names counts
 * as much as {@value #OF_LETTER} lines of the lists. Immutable.
 */
final class NamingReader {
  private static final double COST = 5;
  private static final double COST_OF_WORDS = 2;
  private static final int OF_LETTER = 16;

  /**
   * How what stands around a name, the words of the whole letter, and whether that tells of a fault
   * count together: stacked by a logistic regression over the recorded letters, each by what the
   * others taught (D. Wolpert, Stacked generalization, Neural Networks 5, 1992).
   */
  private static final double OF_AROUND = 1.21;

  private static final double OF_WORDS = 0.59;
  private static final double OF_FAULT = 0.09;
  private static final double CONSTANT = -0.34;
  private static final double LEAST = 1e-6;
  private static final double LEAST_OF_FAULT = 1e-4;
  private static final double LIKELY_WITH_FAULT = 0.4;
  private static final double LIKELY_WITHOUT = 0.7;
  private static final double HALF = 0.5;
  private static final double LIKELY_ALTHOUGH_CONTRADICTED = 0.9;

  private final NamingExamples examples;
  private final TextRegression around;
  private final TextRegression whole;

  /** Learns from the list and from recorded letters. */
  NamingReader(NamingExamples examples, List<RecordedLetter> letters) {
    this.examples = examples;
    List<NamingExamples.Naming> recorded =
        letters.stream().flatMap(letter -> examples.of(letter).stream()).toList();
    around =
        new TextRegression(examples(examples.lines(), recorded, NamingExamples.Naming::keys), COST);
    whole =
        new TextRegression(
            examples(examples.unpaired(), recorded, NamingExamples.Naming::words), COST_OF_WORDS);
  }

  private static List<Example> examples(
      List<NamingExamples.Naming> lines,
      List<NamingExamples.Naming> recorded,
      Function<NamingExamples.Naming, Set<String>> keys) {
    return Stream.concat(counted(lines, 1, keys), counted(recorded, OF_LETTER, keys)).toList();
  }

  private static Stream<Example> counted(
      List<NamingExamples.Naming> namings,
      int times,
      Function<NamingExamples.Naming, Set<String>> keys) {
    return namings.stream().map(each -> new Example(() -> keys.apply(each), each.own(), times));
  }

  /**
   * The boats that are named.
   *
   * @param names how likely the letter is about each name
   * @param least how likely it has to be
   */
  record Named(Map<String, Double> names, double least) {
    boolean isEmpty() {
      return names.isEmpty();
    }

    /**
     * The name that the letter most likely is about, unless it likely is about none of them.
     *
     * @param contradicted whether what else the letter says fits no boat of a name
     */
    Optional<String> best(Predicate<String> contradicted) {
      return names.entrySet().stream()
          .filter(
              each ->
                  each.getValue()
                      >= (contradicted.test(each.getKey()) ? LIKELY_ALTHOUGH_CONTRADICTED : least))
          .max(
              Map.Entry.<String, Double>comparingByValue()
                  .thenComparing(Map.Entry.comparingByKey()))
          .map(Map.Entry::getKey);
    }
  }

  /**
   * The boats that a letter names.
   *
   * @param fault how likely it tells of a fault, 0 to 1
   */
  Named in(Letter letter, LetterText text, double fault) {
    return named(examples.of(letter, text), fault);
  }

  /**
   * The boats that the mail names which a letter quotes.
   *
   * @param fault how likely the letter tells of a fault, 0 to 1
   */
  Named quotedIn(Letter letter, double fault) {
    return named(examples.ofQuoted(letter), fault);
  }

  /** Why a name counts. */
  String why(LetterText text, String name, String title) {
    return examples
        .written(text, name)
        .map(written -> "her name, written “" + written + "”")
        .orElse("her name, " + title);
  }

  private Named named(NamingExamples.Names found, double fault) {
    Map<String, Double> chances = new LinkedHashMap<>();
    double byLetter =
        CONSTANT
            + OF_WORDS * Odds.of(whole.chance(found.words()), LEAST)
            + OF_FAULT * Odds.of(fault, LEAST_OF_FAULT);
    found
        .names()
        .forEach(
            (name, all) ->
                chances.put(
                    name, Odds.chance(byLetter + OF_AROUND * Odds.of(around.chance(all), LEAST))));
    return new Named(chances, fault < HALF ? LIKELY_WITHOUT : LIKELY_WITH_FAULT);
  }
}
