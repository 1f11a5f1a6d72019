package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.letters.recognise.WordRegression.Example;

/**
 * What recorded letters teach of the answers that are told in letters: how usual each is in letters
 * about its symptom, and how like a letter is to those that tell it. Immutable.
 */
final class TaughtAnswers {
  private static final double TOLD_BEFORE = 0.5;
  private static final double LETTERS_BEFORE = 10;

  private final Map<String, OfSymptom> bySymptom = new HashMap<>();

  /** Which answer to which check. */
  record Answer(String check, String answer) {}

  private record OfSymptom(
      int letters, Map<Answer, Integer> numbers, int[] told, NearLetters near) {}

  TaughtAnswers(TopicExamples examples, List<RecordedLetter> letters) {
    Map<String, List<RecordedLetter>> about = new HashMap<>();
    List<RecordedLetter> read =
        letters.stream().filter(letter -> letter.expected().answers().isPresent()).toList();
    for (RecordedLetter letter : read) {
      for (String symptom : letter.expected().symptoms()) {
        about.computeIfAbsent(symptom, each -> new ArrayList<>()).add(letter);
      }
    }
    about.forEach((symptom, all) -> bySymptom.put(symptom, ofSymptom(symptom, all, examples)));
  }

  private static OfSymptom ofSymptom(
      String symptom, List<RecordedLetter> letters, TopicExamples examples) {
    Map<Answer, Integer> numbers = new HashMap<>();
    Map<Integer, Integer> counts = new HashMap<>();
    List<Example> near = new ArrayList<>();
    for (RecordedLetter letter : letters) {
      Map<String, String> answers = letter.expected().answers(symptom).orElseThrow();
      List<Integer> told = new ArrayList<>();
      answers.forEach(
          (check, answer) ->
              told.add(numbers.computeIfAbsent(new Answer(check, answer), each -> numbers.size())));
      told.forEach(number -> counts.merge(number, 1, Integer::sum));
      near.add(new Example(examples.of(letter).keys(), Set.copyOf(told), 1));
    }
    int[] told = new int[numbers.size()];
    counts.forEach((number, count) -> told[number] = count);
    return new OfSymptom(letters.size(), numbers, told, new NearLetters(near, numbers.size()));
  }

  /** What is said of one letter about one symptom. */
  final class Said {
    private final OfSymptom known;
    private final double[] like;

    private Said(OfSymptom known, double[] like) {
      this.known = known;
      this.like = like;
    }

    private int number(Answer answer) {
      return known.numbers().getOrDefault(answer, -1);
    }

    /** The logarithm of the share of letters about the symptom that tell an answer. */
    double usual(Answer answer) {
      int number = number(answer);
      double told = number < 0 ? 0 : known.told()[number];
      return Math.log((told + TOLD_BEFORE) / (known.letters() + LETTERS_BEFORE));
    }

    /** How like the letter is to the most like one that tells the answer, 0 to 1. */
    double like(Answer answer) {
      int number = number(answer);
      return number < 0 ? 0 : like[number];
    }
  }

  /** Reads a letter. */
  Said read(LetterText text, String symptom) {
    OfSymptom known =
        bySymptom.getOrDefault(
            symptom, new OfSymptom(0, Map.of(), new int[0], new NearLetters(List.of(), 0)));
    return new Said(known, known.near().like(TopicExamples.keys(text.words())));
  }
}
