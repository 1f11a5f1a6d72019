package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.search.TextWords.TextWord;

/**
 * How much each word speaks for each thing a letter may be about: a symptom of the library, a fault
 * that it does not know, or no fault at all. Made of the pages, of the lists of words and of
 * recorded letters. Immutable.
 */
final class Topics {
  private static final double SMOOTHING = 60;
  private static final double LETTER = 2.2;

  private final List<Page<Symptom>> symptoms;
  private final Set<String> ofPages = new HashSet<>();
  private final WordWeights weights;

  /**
   * Learns.
   *
   * @param pages what the pages and lists say
   * @param recorded letters with what they should give
   */
  Topics(PageTopics pages, TextParser parser, List<RecordedLetter> recorded) {
    symptoms = pages.symptoms();
    List<Map<String, Double>> counts = new ArrayList<>();
    for (Map<String, Double> of : pages.counts()) {
      counts.add(new HashMap<>(of));
      ofPages.addAll(of.keySet());
    }
    Set<String> names = names(parser, recorded);
    for (RecordedLetter letter : recorded) {
      learn(parser.recorded(letter), names, letter.expected(), counts);
    }
    weights = new WordWeights(counts, SMOOTHING);
  }

  /** The symptoms, whose topics are their numbers. */
  List<Page<Symptom>> symptoms() {
    return symptoms;
  }

  /** The topic of faults that the library does not know. */
  int unknown() {
    return symptoms.size();
  }

  /** The topic of what is no fault. */
  int noFault() {
    return symptoms.size() + 1;
  }

  int size() {
    return symptoms.size() + 2;
  }

  /** The names in letters: of people, boats and places that no page has. */
  private Set<String> names(TextParser parser, List<RecordedLetter> recorded) {
    Set<String> names = new HashSet<>();
    for (RecordedLetter letter : recorded) {
      LetterText text = parser.recorded(letter);
      for (int i = 0; i < text.words().size(); i++) {
        String stem = text.words().get(i).word().stem();
        if (text.isName(i) && !ofPages.contains(stem)) {
          names.add(stem);
        }
      }
    }
    return names;
  }

  private void learn(
      LetterText text, Set<String> names, Expected expected, List<Map<String, Double>> counts) {
    List<Integer> about = new ArrayList<>();
    for (int i = 0; i < symptoms.size(); i++) {
      if (expected.symptoms().contains(symptoms.get(i).id())) {
        about.add(i);
      }
    }
    if (about.isEmpty()) {
      about.add(expected.fault() ? unknown() : noFault());
    }
    for (String key : PageTopics.keys(text.plain())) {
      if (List.of(key.split(" ")).stream().anyMatch(names::contains)) {
        continue;
      }
      about.forEach(topic -> counts.get(topic).merge(key, LETTER / about.size(), Double::sum));
    }
  }

  /** What one word says for each topic: of all it may be looked up by, the most. */
  Map<Integer, Double> of(List<TextWord> words, int at) {
    Map<Integer, Double> most = new LinkedHashMap<>();
    for (String key : PageTopics.keysOf(words, at)) {
      for (WordWeights.Weight weight : weights.of(key)) {
        most.merge(weight.topic(), weight.weight(), Math::max);
      }
    }
    return most;
  }

  /** How much a word counts by how it is meant. */
  static double meant(SaidWord word) {
    double counts = word.negated() ? 0.15 : 1;
    counts *= word.over() ? 0.3 : 1;
    counts *= word.supposed() ? 0.7 : 1;
    counts *= word.believed() ? 0.6 : 1;
    counts *= word.word().faint() ? 0.5 : 1;
    return counts;
  }
}
