package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.SaidAnswers.Key;
import limberboard.letters.recognise.SaidAnswers.OfCheck;
import limberboard.letters.recognise.SaidAnswers.Phrase;

/**
 * Where a letter says an answer to a check in one of the page's ways, near words of what the check
 * asks. Immutable.
 */
final class SaidPhrases {
  private static final double ENOUGH = 0.6;
  private static final double HALF = 0.5;
  private static final double NOT_SURELY = 0.3;
  private static final int LONG = 3;

  private final SaidAnswers said;
  private final OfCheck check;
  private final LetterText text;
  private final List<List<SaidWord>> sentences = new ArrayList<>();
  private final double[] about;
  private final Map<String, Place> best = new HashMap<>();

  /**
   * The place where an answer is said best.
   *
   * @param from the first of the words that say it
   * @param to the word behind the last
   * @param met how rare the words of the phrase are that are met, together
   * @param share which part of the phrase they are, by how rare they are, 0.6 to 1
   * @param about how much their sentence is about what the check asks, 0 to 1
   * @param beside the same of the sentences beside it
   * @param tight how close they stand, 1 where no other word is between them
   * @param so 1 where they are told as so, less where they are supposed or asked
   * @param well 1 where their sentence says beside them that something is not so or is well
   * @param length how many words the phrase has, 3 at most
   */
  record Place(
      int from,
      int to,
      double met,
      double share,
      double about,
      double beside,
      double tight,
      double so,
      double well,
      int length) {
    /** How much speaks for the answer, 0 or more. */
    double sum() {
      return met * (HALF + share) + about + HALF * beside;
    }
  }

  SaidPhrases(SaidAnswers said, OfCheck check, LetterText text) {
    this.said = said;
    this.check = check;
    this.text = text;
    for (int i = 0; i < text.sentences(); i++) {
      sentences.add(text.ofSentence(i));
    }
    about = sentences.stream().mapToDouble(this::about).toArray();
    for (Phrase phrase : check.phrases()) {
      for (int sentence = 0; sentence < about.length; sentence++) {
        match(phrase, sentence);
      }
    }
  }

  /** How much a sentence is about what the check asks, 0 to 1. */
  double about(int sentence) {
    return about[sentence];
  }

  /** How much the sentence is about it that is so most, 0 to 1. */
  double mostAbout() {
    return Arrays.stream(about).max().orElse(0);
  }

  /** The place where an answer is said best, if any. */
  Optional<Place> of(String answer) {
    return Optional.ofNullable(best.get(answer));
  }

  private double about(List<SaidWord> sentence) {
    double met = 0;
    double sum = 0;
    for (Key key : check.about()) {
      double rare = said.rarity(key);
      sum += rare;
      met += sentence.stream().anyMatch(word -> key.isNamed(word.word())) ? rare : 0;
    }
    return sum == 0 ? 0 : met / sum;
  }

  private void match(Phrase phrase, int sentence) {
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
          so = Math.min(so, word.supposed() || word.asked() ? NOT_SURELY : 1);
          break;
        }
      }
    }
    if (matched > 0 && met / sum >= ENOUGH) {
      Place place =
          new Place(
              from,
              to,
              met,
              met / sum,
              about[sentence],
              beside(sentence),
              matched / (double) (to - from),
              so,
              well(sentence, from, to),
              Math.min(LONG, phrase.words().size()));
      best.merge(phrase.answer(), place, (one, other) -> other.sum() > one.sum() ? other : one);
    }
  }

  private double well(int sentence, int from, int to) {
    return sentences.get(sentence).stream()
            .filter(word -> text.words().indexOf(word) < from || text.words().indexOf(word) >= to)
            .anyMatch(TopicExamples::isWell)
        ? 1
        : 0;
  }

  private double beside(int sentence) {
    return Math.max(
        sentence > 0 ? about[sentence - 1] : 0,
        sentence + 1 < about.length ? about[sentence + 1] : 0);
  }
}
