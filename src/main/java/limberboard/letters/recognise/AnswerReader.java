package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.letters.recognise.SaidAnswers.Key;
import limberboard.letters.recognise.SaidAnswers.OfCheck;
import limberboard.letters.recognise.SaidAnswers.Phrase;

/**
 * Reads from a letter which checks its writer has made already, and with what answer: where an
 * answer is said in one of the page's ways, near words of what the check asks.
 */
final class AnswerReader {
  private static final double LEAST = 0.5;
  private static final double LIKE = 10;

  private final SaidAnswers said;
  private final TaughtAnswers told;
  private final Coefficients chance;

  AnswerReader(SaidAnswers said, TaughtAnswers told, Coefficients chance) {
    this.said = said;
    this.told = told;
    this.chance = chance;
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

  /** The answers given to a symptom's checks, one for each check at most. */
  List<GivenAnswer> read(LetterText text, String symptom) {
    Map<String, GivenAnswer> best = new LinkedHashMap<>();
    Map<String, Double> chances = new LinkedHashMap<>();
    for (Candidate each : candidates(text, symptom)) {
      double likely = chance.chance(each.figures());
      if (likely >= LEAST && likely > chances.getOrDefault(each.check(), 0.0)) {
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
    List<List<SaidWord>> sentences = new ArrayList<>();
    for (int i = 0; i < text.sentences(); i++) {
      sentences.add(text.ofSentence(i));
    }
    List<Candidate> all = new ArrayList<>();
    TaughtAnswers.Said before = told.read(text, symptom);
    for (OfCheck check : said.of(symptom)) {
      double[] about = new double[sentences.size()];
      for (int i = 0; i < about.length; i++) {
        about[i] = about(check, sentences.get(i));
      }
      Map<String, Candidate> best = new LinkedHashMap<>();
      for (Phrase phrase : check.phrases()) {
        for (int i = 0; i < about.length; i++) {
          match(check, phrase, sentences, i, about, text)
              .filter(
                  found ->
                      !best.containsKey(found.answer())
                          || sum(found) > sum(best.get(found.answer())))
              .ifPresent(found -> best.put(found.answer(), found));
        }
      }
      all.addAll(rivals(best, before));
    }
    return all;
  }

  private static double sum(Candidate candidate) {
    double[] f = candidate.figures();
    return f[0] * (0.5 + f[1]) + f[2] + 0.5 * f[3];
  }

  private static List<Candidate> rivals(Map<String, Candidate> best, TaughtAnswers.Said before) {
    List<Candidate> all = new ArrayList<>();
    for (Candidate each : best.values()) {
      double rival =
          best.values().stream()
              .filter(other -> !other.answer().equals(each.answer()))
              .mapToDouble(AnswerReader::sum)
              .max()
              .orElse(0);
      TaughtAnswers.Answer answer = new TaughtAnswers.Answer(each.check(), each.answer());
      each.figures()[5] = sum(each) - rival;
      each.figures()[8] = before.usual(answer);
      each.figures()[9] = LIKE * before.like(answer);
      all.add(each);
    }
    return all;
  }

  private double about(OfCheck check, List<SaidWord> sentence) {
    double met = 0;
    double sum = 0;
    for (Key key : check.about()) {
      double rare = said.rarity(key);
      sum += rare;
      met += sentence.stream().anyMatch(word -> key.isNamed(word.word())) ? rare : 0;
    }
    return sum == 0 ? 0 : met / sum;
  }

  private Optional<Candidate> match(
      OfCheck check,
      Phrase phrase,
      List<List<SaidWord>> sentences,
      int sentence,
      double[] about,
      LetterText text) {
    double met = 0;
    double sum = 0;
    int from = Integer.MAX_VALUE;
    int to = 0;
    int matched = 0;
    double so = 1;
    for (Key key : phrase.words()) {
      double rare = said.rarity(key);
      sum += rare;
      for (SaidWord word : sentences.get(sentence)) {
        if (key.is(word)) {
          int at = text.words().indexOf(word);
          met += rare;
          matched++;
          from = Math.min(from, at);
          to = Math.max(to, at + 1);
          so = Math.min(so, word.supposed() || word.asked() ? 0.3 : 1);
          break;
        }
      }
    }
    if (matched == 0 || met / sum < 0.6) {
      return Optional.empty();
    }
    double beside =
        Math.max(
            sentence > 0 ? about[sentence - 1] : 0,
            sentence + 1 < about.length ? about[sentence + 1] : 0);
    double tight = matched / (double) (to - from);
    double[] figures = {
      met,
      met / sum,
      about[sentence],
      beside,
      tight,
      0,
      so,
      Math.min(3, phrase.words().size()),
      0,
      0
    };
    return Optional.of(new Candidate(check.id(), phrase.answer(), figures, from, to));
  }
}
