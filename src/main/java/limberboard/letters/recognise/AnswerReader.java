package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.letters.recognise.SaidAnswers.OfCheck;
import limberboard.letters.recognise.TaughtAnswers.Answer;

/**
 * Reads from a letter which checks its writer has made already, and with what answer: by the page's
 * ways of saying it, and by what recorded letters teach of how it is told. Both together become a
 * chance.
 */
final class AnswerReader {
  private static final double LEAST = 0.5;
  private static final double LEAST_OF_FEW = 0.4;
  private static final double ABOUT_AT_LEAST = 0.6;
  private static final int SHORTEST = 10;

  private final SaidAnswers said;
  private final TaughtAnswers taught;
  private final Coefficients chance;
  private final double least;

  AnswerReader(SaidAnswers said, TaughtAnswers taught, Coefficients chance) {
    this.said = said;
    this.taught = taught;
    this.chance = chance;
    least = taught.letters() < Teaching.FEW_LETTERS ? LEAST_OF_FEW : LEAST;
  }

  /**
   * An answer that may be said.
   *
   * @param check the check
   * @param answer the answer
   * @param figures what speaks for it
   * @param from the first of the words that say it
   * @param to the word behind the last
   */
  record Candidate(String check, String answer, double[] figures, int from, int to) {}

  /** What taught words come to for an answer: of one sentence that says most, and of all. */
  private record Weighed(int sentence, double most, double all) {}

  /** The answers given to a symptom's checks, one for each check at most. */
  List<GivenAnswer> read(LetterText text, String symptom) {
    Map<String, GivenAnswer> best = new LinkedHashMap<>();
    Map<String, Double> chances = new LinkedHashMap<>();
    for (Candidate each : candidates(text, symptom)) {
      double likely = chance.chance(each.figures());
      if (likely >= least && likely > chances.getOrDefault(each.check(), 0.0)) {
        chances.put(each.check(), likely);
        best.put(each.check(), new GivenAnswer(each.check(), each.answer(), words(text, each)));
      }
    }
    return List.copyOf(best.values());
  }

  private static Words words(LetterText text, Candidate each) {
    return new Words(
        text.written(each.from(), each.to()),
        text.words().get(each.from()).word().start(),
        text.words().get(each.to() - 1).word().end());
  }

  /** All answers that some words speak for, of each the best place. */
  List<Candidate> candidates(LetterText text, String symptom) {
    List<Candidate> all = new ArrayList<>();
    if (!text.words().isEmpty()) {
      TaughtAnswers.Said told = taught.read(text, symptom);
      for (OfCheck check : said.of(symptom)) {
        all.addAll(ofCheck(new SaidPhrases(said, check, text), check, told, text));
      }
    }
    return all;
  }

  private static List<Candidate> ofCheck(
      SaidPhrases phrases, OfCheck check, TaughtAnswers.Said told, LetterText text) {
    Map<String, Weighed> weighed = new LinkedHashMap<>();
    for (String answer : check.answers()) {
      weighed.put(answer, weighed(phrases, told, new Answer(check.id(), answer), text));
    }
    List<Candidate> all = new ArrayList<>();
    for (String answer : check.answers()) {
      Answer of = new Answer(check.id(), answer);
      Optional<SaidPhrases.Place> place = phrases.of(answer);
      Weighed own = weighed.get(answer);
      if (place.isPresent() || own.most() > 0) {
        double[] figures =
            new double[] {
              place.map(SaidPhrases.Place::met).orElse(0.0),
              place.map(SaidPhrases.Place::share).orElse(0.0),
              place.map(SaidPhrases.Place::about).orElse(0.0),
              place.map(SaidPhrases.Place::beside).orElse(0.0),
              place.map(SaidPhrases.Place::tight).orElse(0.0),
              place.map(SaidPhrases.Place::so).orElse(0.0),
              place.map(SaidPhrases.Place::length).orElse(0),
              place.map(SaidPhrases.Place::well).orElse(0.0),
              place.isPresent() ? 1 : 0,
              lead(check, answer, each -> phrases.of(each).map(SaidPhrases.Place::sum).orElse(0.0)),
              Math.sqrt(own.most()),
              lead(check, answer, each -> weighed.get(each).most()),
              lead(check, answer, each -> weighed.get(each).all()),
              phrases.about(own.sentence()),
              phrases.mostAbout(),
              told.usual(of),
              told.odds(of)
            };
        int[] words =
            place
                .map(found -> new int[] {found.from(), found.to()})
                .orElseGet(() -> words(text, own.sentence(), told, of));
        all.add(new Candidate(check.id(), answer, figures, words[0], words[1]));
      }
    }
    return all;
  }

  /** How far an answer is ahead of the best other one to the same check. */
  private static double lead(OfCheck check, String answer, ToDoubleFunction<String> sum) {
    double rival =
        check.answers().stream()
            .filter(each -> !each.equals(answer))
            .mapToDouble(sum)
            .max()
            .orElse(0);
    return sum.applyAsDouble(answer) - rival;
  }

  private static Weighed weighed(
      SaidPhrases phrases, TaughtAnswers.Said told, Answer answer, LetterText text) {
    int best = 0;
    double most = 0;
    double all = 0;
    for (int i = 0; i < text.sentences(); i++) {
      double here = told.weight(answer, i);
      all += here;
      if (here * (ABOUT_AT_LEAST + phrases.about(i)) > most) {
        most = here * (ABOUT_AT_LEAST + phrases.about(i));
        best = i;
      }
    }
    return new Weighed(
        best, told.weight(answer, best), all / Math.sqrt(text.words().size() + SHORTEST));
  }

  /** The words of a sentence that speak for an answer, from the first to behind the last. */
  private static int[] words(
      LetterText text, int sentence, TaughtAnswers.Said told, Answer answer) {
    int[] all = indices(text, word -> word.sentence() == sentence);
    int[] speaking =
        indices(
            text,
            word ->
                word.sentence() == sentence
                    && TopicExamples.keys(List.of(word)).stream()
                        .anyMatch(key -> told.weight(answer, key) > 0));
    int[] of = speaking.length > 0 ? speaking : all;
    return new int[] {of[0], of[of.length - 1] + 1};
  }

  private static int[] indices(LetterText text, Predicate<SaidWord> which) {
    return IntStream.range(0, text.words().size())
        .filter(i -> which.test(text.words().get(i)))
        .toArray();
  }
}
