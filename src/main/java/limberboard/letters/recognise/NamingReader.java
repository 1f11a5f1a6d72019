package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.TextRegression.Example;

/**
 * Says which of the boats that a letter names it is about, if any: learnt from lines in which
 * people name boats, and from recorded letters. Where the rules of {@link BoatNames} say the same,
 * a small chance is enough, since owners mostly name their own boat; where they cannot tell, six in
 * ten; against them it takes seven in ten. A boat that a recorded letter names counts as much as
 * four lines of the list. Immutable.
 */
final class NamingReader {
  private static final double COST = 10;
  private static final int OF_LETTER = 4;
  private static final double LIKELY = 0.25;
  private static final double LIKELY_BY_ITSELF = 0.6;
  private static final double LIKELY_AGAINST_RULES = 0.7;

  private final NamingExamples examples;
  private final TextRegression learnt;

  /** Learns from the list and from recorded letters. */
  NamingReader(NamingExamples examples, List<RecordedLetter> letters) {
    this.examples = examples;
    List<Example> all = new ArrayList<>();
    examples.lines().forEach(each -> all.add(example(each)));
    letters.forEach(
        letter ->
            examples
                .of(letter)
                .forEach(each -> all.addAll(Collections.nCopies(OF_LETTER, example(each)))));
    learnt = new TextRegression(all, COST);
  }

  private static Example example(NamingExamples.Naming naming) {
    return new Example(naming::keys, naming.own());
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

    private double least(String name) {
      if (ruled.isPresent()) {
        return ruled.get().equals(name) ? LIKELY : LIKELY_AGAINST_RULES;
      }
      return passing.contains(name) ? LIKELY_AGAINST_RULES : LIKELY_BY_ITSELF;
    }

    /** The name that the letter most likely is about, unless it likely is about none of them. */
    Optional<String> best() {
      return names.entrySet().stream()
          .filter(each -> each.getValue() >= least(each.getKey()))
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

  private Named named(Map<String, Set<String>> keys) {
    Map<String, Double> chances = new LinkedHashMap<>();
    keys.forEach((name, all) -> chances.put(name, learnt.chance(all)));
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
