package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What pages and recorded letters teach of the answers that are told in letters: how usual each is
 * in letters about its symptom, what each word says for it, and how likely a letter as a whole
 * tells it. Of a symptom it is learnt when it is first asked for. Safe for use by several threads.
 */
final class TaughtAnswers {
  private static final double TOLD_BEFORE = 0.5;
  private static final double LETTERS_BEFORE = 10;
  private static final double SMOOTHING = 30;
  private static final double PHRASE = 3;
  private static final double LETTER = 1;
  private static final double COST = 20;
  private static final double LEAST = 1e-3;

  private final SaidAnswers said;
  private final TopicExamples examples;
  private final int letters;
  private final Map<String, List<RecordedLetter>> about = new HashMap<>();
  private final Map<String, OfSymptom> bySymptom = new ConcurrentHashMap<>();

  /** Which answer to which check. */
  record Answer(String check, String answer) {}

  /** A text of which it is known which answers it tells. */
  private record Telling(Set<String> keys, Set<Integer> answers, double counts) {}

  private record OfSymptom(
      int letters,
      Map<Answer, Integer> numbers,
      int[] told,
      WordWeights words,
      List<TextRegression> whole) {}

  TaughtAnswers(SaidAnswers said, TopicExamples examples, List<RecordedLetter> letters) {
    this.said = said;
    this.examples = examples;
    this.letters = letters.size();
    for (RecordedLetter letter : letters) {
      if (letter.expected().answers().isPresent()) {
        for (String symptom : letter.expected().symptoms()) {
          about.computeIfAbsent(symptom, each -> new ArrayList<>()).add(letter);
        }
      }
    }
  }

  /** How many recorded letters are there, whatever they tell. */
  int letters() {
    return letters;
  }

  private OfSymptom learnt(String symptom) {
    Map<Answer, Integer> numbers = new LinkedHashMap<>();
    List<Telling> all = new ArrayList<>();
    for (SaidAnswers.OfCheck check : said.of(symptom)) {
      for (SaidAnswers.Phrase phrase : check.phrases()) {
        Answer answer = new Answer(check.id(), phrase.answer());
        int number = numbers.computeIfAbsent(answer, each -> numbers.size());
        all.add(new Telling(phrase.keys(), Set.of(number), PHRASE));
      }
    }
    int[] told = new int[numbers.size()];
    List<RecordedLetter> letters = about.getOrDefault(symptom, List.of());
    for (RecordedLetter letter : letters) {
      Telling telling = telling(letter, symptom, numbers);
      telling.answers().forEach(number -> told[number]++);
      all.add(telling);
    }
    return new OfSymptom(
        letters.size(), numbers, told, words(all, told.length), whole(all, told.length));
  }

  private Telling telling(RecordedLetter letter, String symptom, Map<Answer, Integer> numbers) {
    List<Integer> told = new ArrayList<>();
    letter
        .expected()
        .answers(symptom)
        .orElseThrow()
        .forEach(
            (check, answer) -> {
              Integer number = numbers.get(new Answer(check, answer));
              if (number != null) {
                told.add(number);
              }
            });
    return new Telling(examples.toned(letter), Set.copyOf(told), LETTER);
  }

  /** What each word says for each answer rather than for letters about the symptom at all. */
  private static WordWeights words(List<Telling> texts, int answers) {
    List<Map<String, Double>> counts = new ArrayList<>();
    for (int i = 0; i <= answers; i++) {
      counts.add(new HashMap<>());
    }
    for (Telling text : texts) {
      for (String key : text.keys()) {
        text.answers().forEach(answer -> counts.get(answer).merge(key, text.counts(), Double::sum));
        if (text.counts() == LETTER) {
          counts.get(answers).merge(key, LETTER, Double::sum);
        }
      }
    }
    return new WordWeights(counts, SMOOTHING);
  }

  private static List<TextRegression> whole(List<Telling> texts, int answers) {
    return TextRegression.ofSorts(
        texts.stream().map(Telling::keys).toList(),
        texts.stream().map(Telling::answers).toList(),
        answers,
        COST);
  }

  /** What is said of one letter about one symptom. */
  static final class Said {
    private final OfSymptom known;
    private final Set<String> letter;
    private final List<double[]> sentences = new ArrayList<>();

    private Said(OfSymptom known, LetterText text) {
      this.known = known;
      letter = TopicExamples.toned(text.words());
      for (int i = 0; i < text.sentences(); i++) {
        double[] sums = new double[known.told().length + 1];
        for (String key : TopicExamples.toned(text.ofSentence(i))) {
          known.words().of(key).forEach(each -> sums[each.topic()] += each.weight());
        }
        sentences.add(sums);
      }
    }

    /** The logarithm of the share of letters about the symptom that tell an answer. */
    double usual(Answer answer) {
      double told = known.told()[known.numbers().get(answer)];
      return Math.log((told + TOLD_BEFORE) / (known.letters() + LETTERS_BEFORE));
    }

    /** The log odds that a letter with these words tells an answer somewhere. */
    double odds(Answer answer) {
      return Odds.of(known.whole().get(known.numbers().get(answer)).chance(letter), LEAST);
    }

    /** What the words of a sentence say for an answer together, 0 or more. */
    double weight(Answer answer, int sentence) {
      return sentences.get(sentence)[known.numbers().get(answer)];
    }

    /** What one word says for an answer, 0 or more. */
    double weight(Answer answer, String key) {
      int number = known.numbers().get(answer);
      return known.words().of(key).stream()
          .filter(each -> each.topic() == number)
          .mapToDouble(WordWeights.Weight::weight)
          .sum();
    }
  }

  /** Reads a letter, for the answers of a symptom's checks. */
  Said read(LetterText text, String symptom) {
    return new Said(bySymptom.computeIfAbsent(symptom, this::learnt), text);
  }
}
