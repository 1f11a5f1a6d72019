package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.TextRegression.Example;

/**
 * Says which of the boats that a letter names it is about, if any: learnt from lines in which
 * people name boats, and from recorded letters: from what stands around each name, and from the
 * words of the whole letter. Where the rules of {@link BoatNames} say the same, a chance of 0.55 is
 * enough; where they cannot tell it takes 0.65, against them 0.7, and 0.9 where the letter tells of
 * another model than hers. A boat that a recorded letter names counts as much as four lines of the
 * list. Immutable.
 */
final class NamingReader {
  private static final double COST = 5;
  private static final double COST_OF_WORDS = 2;
  private static final int OF_LETTER = 4;

  /**
   * How what stands around a name and the words of the whole letter count together: stacked by a
   * logistic regression over the recorded letters, each by what the others taught (D. Wolpert,
   * Stacked generalization, Neural Networks 5, 1992).
   */
  private static final double OF_AROUND = 1.72;

  private static final double OF_WORDS = 0.75;
  private static final double CONSTANT = 0.46;
  private static final double LEAST = 1e-6;
  private static final double LIKELY = 0.55;
  private static final double LIKELY_BY_ITSELF = 0.65;
  private static final double LIKELY_AGAINST_RULES = 0.7;
  private static final double LIKELY_ALTHOUGH_CONTRADICTED = 0.9;

  private final NamingExamples examples;
  private final TextRegression around;
  private final TextRegression whole;

  /** Learns from the list and from recorded letters. */
  NamingReader(NamingExamples examples, List<RecordedLetter> letters) {
    this.examples = examples;
    List<NamingExamples.Naming> all = new ArrayList<>(examples.lines());
    letters.forEach(
        letter ->
            examples.of(letter).forEach(each -> all.addAll(Collections.nCopies(OF_LETTER, each))));
    around = new TextRegression(examples(all, NamingExamples.Naming::keys), COST);
    whole = new TextRegression(examples(all, NamingExamples.Naming::words), COST_OF_WORDS);
  }

  private static List<Example> examples(
      List<NamingExamples.Naming> all, Function<NamingExamples.Naming, Set<String>> keys) {
    return all.stream().map(each -> new Example(() -> keys.apply(each), each.own())).toList();
  }

  /**
   * The boats that are named.
   *
   * @param names how likely the letter is about each name
   * @param ruled the name that the rules say it is about, if any
   * @param passing names that the rules say are named in passing
   */
  record Named(Map<String, Double> names, Optional<String> ruled, Set<String> passing) {
    boolean isEmpty() {
      return names.isEmpty();
    }

    private double least(String name, Predicate<String> contradicted) {
      if (contradicted.test(name)) {
        return LIKELY_ALTHOUGH_CONTRADICTED;
      }
      if (ruled.isPresent()) {
        return ruled.get().equals(name) ? LIKELY : LIKELY_AGAINST_RULES;
      }
      return passing.contains(name) ? LIKELY_AGAINST_RULES : LIKELY_BY_ITSELF;
    }

    /**
     * The name that the letter most likely is about, unless it likely is about none of them.
     *
     * @param contradicted whether what else the letter says fits no boat of a name
     */
    Optional<String> best(Predicate<String> contradicted) {
      return names.entrySet().stream()
          .filter(each -> each.getValue() >= least(each.getKey(), contradicted))
          .max(
              Map.Entry.<String, Double>comparingByValue()
                  .thenComparing(Map.Entry.comparingByKey()))
          .map(Map.Entry::getKey);
    }
  }

  /** The boats that a letter names. */
  Named in(Letter letter, LetterText text) {
    return named(examples.of(letter, text));
  }

  /** The boats that the mail names which a letter quotes. */
  Named quotedIn(Letter letter) {
    return named(examples.ofQuoted(letter));
  }

  /** Why a name counts. */
  String why(LetterText text, String name, String title) {
    return examples
        .written(text, name)
        .map(written -> "her name, written “" + written + "”")
        .orElse("her name, " + title);
  }

  private Named named(NamingExamples.Names found) {
    Map<String, Set<String>> keys = found.names();
    Map<String, Double> chances = new LinkedHashMap<>();
    double byLetter = CONSTANT + OF_WORDS * Odds.of(whole.chance(found.words()), LEAST);
    keys.forEach(
        (name, all) -> {
          double byName = OF_AROUND * Odds.of(around.chance(all), LEAST);
          chances.put(name, Odds.chance(byLetter + byName));
        });
    Optional<String> ruled =
        keys.entrySet().stream()
            .filter(each -> each.getValue().contains(NamingKeys.RULED))
            .map(Map.Entry::getKey)
            .findFirst();
    Set<String> passing =
        keys.entrySet().stream()
            .filter(each -> each.getValue().contains(NamingKeys.RULED_PASSING))
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    return new Named(chances, ruled, passing);
  }
}
