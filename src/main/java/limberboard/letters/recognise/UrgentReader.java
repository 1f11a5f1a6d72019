package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.WordRegression.Example;

/**
 * Says whether a letter is urgent: which of its sentences tells most likely of danger, learnt from
 * sentences that people wrote of danger, and from recorded letters. Of recorded letters that are
 * not urgent only those sentences are learnt from that sound like danger (hard negatives: K. Sung
 * and T. Poggio, Example-based learning for view-based human face detection, IEEE PAMI 20(1),
 * 1998). Whole letters of a list show, beside those, how the same words tell of danger that is
 * there and of danger that is not. How people in danger write shows in the small words too: <em>we
 * are</em>, <em>still</em>, <em>what do we</em>; so all the words of a letter are learnt as they
 * are written, one by one and two that follow each other. Beside them stand a few rules that a
 * person wrote, as one more sign. Immutable.
 */
final class UrgentReader {
  private static final int ROUNDS = 15;
  private static final int ROUNDS_AT_FIRST = 6;
  private static final double RIDGE = 0.0005;
  private static final double SHORTEST = 600;
  private static final double SHORTEST_LETTER = 100;
  private static final double COST = 10;
  private static final double OF_LETTER = 2;
  private static final double OF_CALM_LETTER = 0.5;
  private static final double SOUNDS_LIKE_DANGER = 0.05;
  private static final double LEAST = 1e-4;
  private static final double NO_OTHER = -4;
  private static final double LIKELY = 0.5;
  private static final double LEAST_OF_SENTENCE = 0.05;
  private static final int FEW_WORDS = 5;
  private static final double LEAST_URGENT = 0.12;
  private static final double LEAST_OF_FEW = 0.2;

  private final DangerSentences sentences;
  private final UrgentRules rules;
  private final WordRegression told;
  private final WordRegression letter;
  private final TextRegression written;
  private final int calm;
  private final double least;

  /**
   * A sentence that may tell of danger.
   *
   * @param what what would be dangerous
   * @param chance how likely it is told, by the sentence alone
   * @param from its first word
   * @param to the word behind its last
   */
  record Told(String what, double chance, int from, int to) {}

  /**
   * What of a letter may tell of danger.
   *
   * @param sentences its sentences, the likeliest first
   * @param whole the log odds that it is urgent, by the stems of all its words together
   * @param written the same by its words just as they are written
   * @param rule what a rule found, if any
   */
  record Danger(
      List<Told> sentences, double whole, double written, Optional<UrgentRules.Alarm> rule) {
    /**
     * What it most likely is. Where no sentence and no rule says so, the letter as a whole may all
     * the same: then it is told as a danger without a name, by the likeliest sentence. Empty where
     * there is no sentence at all.
     */
    Optional<Told> likeliest() {
      double least = rule.isPresent() ? LIKELY : LEAST_OF_SENTENCE;
      return sentences.stream()
          .findFirst()
          .filter(told -> told.chance() >= least)
          .or(() -> rule.map(alarm -> new Told(alarm.what(), 0, alarm.from(), alarm.to())))
          .or(this::unnamed);
    }

    private Optional<Told> unnamed() {
      return sentences.stream()
          .filter(told -> told.to() - told.from() >= FEW_WORDS)
          .findFirst()
          .or(() -> sentences.stream().findFirst())
          .map(told -> new Told(Recognition.Urgent.UNNAMED, told.chance(), told.from(), told.to()));
    }
  }

  UrgentReader(
      DangerSentences sentences,
      UrgentRules rules,
      TopicExamples topics,
      WholeLetters list,
      List<RecordedLetter> letters) {
    this.sentences = sentences;
    this.rules = rules;
    calm = sentences.calm();
    least = letters.size() < Teaching.FEW_LETTERS ? LEAST_OF_FEW : LEAST_URGENT;
    told = told(list, letters);
    letter = letter(topics, list, letters);
    written = written(topics, list, letters);
  }

  private WordRegression told(WholeLetters list, List<RecordedLetter> letters) {
    List<Example> examples = new ArrayList<>(sentences.examples());
    for (RecordedLetter letter : letters) {
      sentences
          .dangers(letter)
          .forEach((keys, what) -> examples.add(new Example(keys, Set.of(what), OF_LETTER)));
    }
    WordRegression first = learnt(examples, ROUNDS_AT_FIRST);
    Stream.concat(
            list.all().stream().flatMap(each -> each.sentences().stream()),
            letters.stream()
                .filter(each -> !each.expected().urgent())
                .flatMap(each -> sentences.of(each).stream()))
        .filter(keys -> first.chances(keys)[calm] < 1 - SOUNDS_LIKE_DANGER)
        .forEach(keys -> examples.add(new Example(keys, Set.of(calm), OF_CALM_LETTER)));
    return learnt(examples, ROUNDS);
  }

  private static WordRegression letter(
      TopicExamples topics, WholeLetters list, List<RecordedLetter> letters) {
    List<Example> whole = new ArrayList<>();
    list.all().forEach(each -> whole.add(new Example(each.stems(), side(each.urgent()), 1)));
    for (RecordedLetter letter : letters) {
      whole.add(new Example(topics.of(letter).keys(), side(letter.expected().urgent()), 1));
    }
    return new WordRegression(whole, 2, SHORTEST_LETTER, ROUNDS, RIDGE);
  }

  private static TextRegression written(
      TopicExamples topics, WholeLetters list, List<RecordedLetter> letters) {
    return new TextRegression(
        Stream.concat(
                list.all().stream().map(each -> written(each::text, each.urgent())),
                letters.stream()
                    .map(each -> written(() -> topics.text(each), each.expected().urgent())))
            .toList(),
        COST);
  }

  private static TextRegression.Example written(Supplier<String> text, boolean urgent) {
    return new TextRegression.Example(() -> TopicExamples.written(text.get()), urgent, 1);
  }

  private static Set<Integer> side(boolean urgent) {
    return Set.of(urgent ? 1 : 0);
  }

  private double whole(LetterText text) {
    return Odds.of(letter.chances(TopicExamples.keys(text.words()))[1], LEAST);
  }

  private WordRegression learnt(List<Example> examples, int rounds) {
    return new WordRegression(examples, sentences.whats().size(), SHORTEST, rounds, RIDGE);
  }

  /** Reads a letter. */
  Danger read(LetterText text) {
    return new Danger(
        told(text),
        whole(text),
        Odds.of(written.chance(TopicExamples.written(text.text())), LEAST),
        rules.in(text));
  }

  private List<Told> told(LetterText text) {
    List<Told> all = new ArrayList<>();
    int from = 0;
    for (int sentence = 0; sentence < text.sentences(); sentence++) {
      List<SaidWord> words = text.ofSentence(sentence);
      double[] chances = told.chances(sentences.keys(words));
      int most = calm == 0 ? 1 : 0;
      for (int i = 0; i < chances.length; i++) {
        most = i != calm && chances[i] > chances[most] ? i : most;
      }
      all.add(new Told(sentences.whats().get(most), 1 - chances[calm], from, from + words.size()));
      from += words.size();
    }
    all.sort(Comparator.comparingDouble(Told::chance).reversed());
    return all;
  }

  /**
   * What is dangerous, if the letter is urgent. Where few letters are recorded, too little is known
   * of how this yard's owners write, and it must be likelier.
   *
   * @param chance how figures become a chance
   * @param fault how likely the letter tells of a fault, 0 to 1
   */
  Optional<Told> urgent(LetterText text, Coefficients chance, double fault) {
    Danger danger = read(text);
    return danger
        .likeliest()
        .filter(told -> chance.chance(with(fault, figures(danger, text))) >= least);
  }

  /**
   * The figures with one more, whether the letter tells of a fault: danger mostly comes with one.
   *
   * @param fault how likely it does, 0 to 1
   */
  static double[] with(double fault, double[] figures) {
    double[] all = Arrays.copyOf(figures, figures.length + 1);
    all[figures.length] = Odds.of(fault, LEAST);
    return all;
  }

  /** What the words of a letter say of how likely it is urgent. */
  static double[] figures(Danger danger, LetterText text) {
    List<Told> told = danger.sentences();
    double first = told.isEmpty() ? 0 : told.get(0).chance();
    double second = told.size() < 2 ? 0 : told.get(1).chance();
    double any = told.stream().mapToDouble(each -> Math.exp(Odds.of(each.chance(), LEAST))).sum();
    return new double[] {
      Odds.of(first, LEAST),
      Math.max(NO_OTHER, Odds.of(second, LEAST)),
      Math.log(LEAST + any),
      danger.whole(),
      danger.written(),
      danger.rule().isPresent() ? 1 : 0,
      Math.log(1 + text.words().size())
    };
  }
}
