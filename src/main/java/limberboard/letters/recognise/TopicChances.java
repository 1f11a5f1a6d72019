package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.WordRegression.Example;

/**
 * What is learnt of topics text by text, beside the weights of single words: how likely a letter,
 * and some sentences of it, are about each, and how like it is to letters about each. Immutable.
 */
final class TopicChances {
  /** Less than any log odds. */
  static final double NOTHING = -10;

  private static final int MOST_TOPICS = 100;
  private static final int ROUNDS = 15;
  private static final double RIDGE = 0.001;
  private static final double SHORTEST = 100;
  private static final int WINDOW = 3;
  private static final double LEAST = 1e-4;

  private final NearLetters near;
  private final WordRegression regression;
  private final int topics;
  private final boolean all;

  TopicChances(TopicExamples examples, List<RecordedLetter> letters) {
    topics = examples.topics();
    all = topics <= MOST_TOPICS;
    List<Example> ofLetters = letters.stream().map(examples::of).toList();
    near = new NearLetters(ofLetters, topics);
    List<Example> learnt = new ArrayList<>();
    if (all) {
      learnt.addAll(examples.ofPages());
      learnt.addAll(ofLetters);
    }
    regression = new WordRegression(learnt, all ? topics : 1, SHORTEST, ROUNDS, RIDGE);
  }

  /**
   * What is said of one letter.
   *
   * @param whole for each topic the log odds that the letter is about it
   * @param window the same of the three sentences together of which it is likeliest
   * @param like for each topic how like the most like letter is
   */
  record Said(double[] whole, double[] window, double[] like) {}

  /** Reads a letter; with too many topics to learn them together, the words' weights must do. */
  Said read(LetterText text, TopicScores scores) {
    Set<String> keys = TopicExamples.keys(text.words());
    if (!all) {
      double[] shares = shares(scores);
      return new Said(shares, shares, near.like(keys));
    }
    double[] window = new double[topics];
    for (int sentence = 0; sentence < text.sentences(); sentence++) {
      List<SaidWord> words = new ArrayList<>();
      for (int i = sentence; i < Math.min(text.sentences(), sentence + WINDOW); i++) {
        words.addAll(text.ofSentence(i));
      }
      double[] chances = regression.chances(TopicExamples.keys(words));
      for (int topic = 0; topic < topics; topic++) {
        window[topic] = Math.max(window[topic], chances[topic]);
      }
    }
    return new Said(odds(regression.chances(keys)), odds(window), near.like(keys));
  }

  private double[] shares(TopicScores scores) {
    double sum = 0;
    double[] shares = new double[topics];
    for (int topic = 0; topic < topics; topic++) {
      shares[topic] = Math.exp(2 * scores.whole(topic));
      sum += shares[topic];
    }
    for (int topic = 0; topic < topics; topic++) {
      shares[topic] /= sum;
    }
    return odds(shares);
  }

  private static double[] odds(double[] chances) {
    double[] odds = new double[chances.length];
    for (int i = 0; i < odds.length; i++) {
      double chance = Math.max(LEAST, Math.min(1 - LEAST, chances[i]));
      odds[i] = Math.log(chance / (1 - chance));
    }
    return odds;
  }
}
