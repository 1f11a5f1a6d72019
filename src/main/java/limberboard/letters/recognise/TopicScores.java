package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.search.TextWords.TextWord;

/** What a letter's words come to for each topic, with the words. */
final class TopicScores {
  private static final double USUAL_SCALE = 4;
  private static final double SHORTEST = 12;
  private static final int WINDOW = 3;
  private static final double SUBJECT = 1.4;

  private final LetterText text;
  private final double[] whole;
  private final double[] window;
  private final List<Map<Integer, Double>> ofWords = new ArrayList<>();
  private double length;

  /**
   * A word that speaks for a topic.
   *
   * @param at its number in the text
   * @param weight how much
   */
  record Speaking(int at, double weight) {}

  TopicScores(Topics topics, LetterText text) {
    this.text = text;
    whole = new double[topics.size()];
    window = new double[topics.size()];
    List<TextWord> plain = text.plain();
    Map<String, double[]> most = new HashMap<>();
    double[][] sentences = new double[text.sentences()][topics.size()];
    Set<String> inSentence = new HashSet<>();
    int sentence = -1;
    for (int i = 0; i < plain.size(); i++) {
      SaidWord word = text.words().get(i);
      if (word.sentence() != sentence) {
        sentence = word.sentence();
        inSentence.clear();
      }
      double counts = Topics.meant(word) * (i < text.subjectWords() ? SUBJECT : 1);
      Map<Integer, Double> says = topics.of(plain, i);
      says.replaceAll((topic, weight) -> weight * counts);
      ofWords.add(says);
      String key = word.word().stem();
      length += word.word().stop() ? 0 : 1;
      boolean once = inSentence.add(key);
      double[] best = most.computeIfAbsent(key, k -> new double[topics.size()]);
      for (Map.Entry<Integer, Double> each : says.entrySet()) {
        int topic = each.getKey();
        best[topic] = Math.max(best[topic], each.getValue());
        if (once) {
          sentences[sentence][topic] += each.getValue();
        }
      }
    }
    for (double[] best : most.values()) {
      for (int topic = 0; topic < whole.length; topic++) {
        whole[topic] += best[topic];
      }
    }
    for (int topic = 0; topic < whole.length; topic++) {
      for (int from = 0; from < sentences.length; from++) {
        double sum = 0;
        for (int s = from; s < Math.min(sentences.length, from + WINDOW); s++) {
          sum += sentences[s][topic];
        }
        window[topic] = Math.max(window[topic], sum);
      }
    }
  }

  /** All words together, by the letter's length, so that short and long letters are alike. */
  double whole(int topic) {
    return USUAL_SCALE * whole[topic] / Math.max(SHORTEST, length);
  }

  /** The best three sentences that stand together. */
  double window(int topic) {
    return window[topic] / Math.sqrt(20);
  }

  /** The words that speak most for a topic, at most a few, in the text's order. */
  List<Speaking> words(int topic, int most) {
    List<Speaking> all = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < ofWords.size(); i++) {
      double weight = ofWords.get(i).getOrDefault(topic, 0.0);
      if (weight > 0 && !text.words().get(i).word().stop()) {
        all.add(new Speaking(i, weight));
      }
    }
    return all.stream()
        .sorted(Comparator.comparingDouble(Speaking::weight).reversed())
        .filter(each -> seen.add(text.words().get(each.at()).word().stem()))
        .limit(most)
        .sorted(Comparator.comparingInt(Speaking::at))
        .toList();
  }
}
