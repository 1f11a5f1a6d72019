package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.search.TextWords;
import limberboard.search.TextWords.TextWord;

/**
 * The words of each topic as pages and lists have them: one for each symptom, then faults that the
 * library does not know, then what is no fault. Immutable.
 *
 * @param symptoms the symptoms
 * @param counts for each topic how much each word counts
 */
record PageTopics(List<Page<Symptom>> symptoms, List<Map<String, Double>> counts) {
  private static final double NAME = 4;
  private static final double SUMMARY = 2;
  private static final double SAID = 1.2;
  private static final double DETAIL = 0.7;
  private static final double THING = 3;
  private static final double SENTENCE = 1;

  static PageTopics of(TextWords reader, Library library) {
    List<Page<Symptom>> symptoms = library.all(Symptom.class);
    List<Map<String, Double>> counts = new ArrayList<>();
    symptoms.forEach(symptom -> counts.add(ofPage(reader, symptom)));
    counts.add(ofLists(reader, "things.txt", "unknown-faults.txt"));
    counts.add(ofLists(reader, "no-faults.txt", "other-letters.txt"));
    return new PageTopics(symptoms, counts);
  }

  private static Map<String, Double> ofLists(TextWords reader, String words, String sentences) {
    Map<String, Double> of = new HashMap<>();
    WordList.groups(words)
        .forEach(group -> group.forEach(phrase -> add(of, reader, phrase, THING)));
    WordList.lines(sentences).forEach(line -> add(of, reader, line, SENTENCE));
    return of;
  }

  private static Map<String, Double> ofPage(TextWords reader, Page<Symptom> page) {
    Map<String, Double> counts = new HashMap<>();
    add(counts, reader, page.title(), NAME);
    page.head().saidAs().forEach(phrase -> add(counts, reader, phrase, NAME));
    add(counts, reader, page.head().summary(), SUMMARY);
    for (Cause cause : page.details().causes()) {
      add(counts, reader, cause.title(), SAID);
      add(counts, reader, cause.about(), DETAIL);
    }
    for (Check check : page.details().checks()) {
      add(counts, reader, check.ask(), SAID);
      check.saidAs().values().forEach(all -> all.forEach(said -> add(counts, reader, said, SAID)));
      add(counts, reader, check.how(), DETAIL / 2);
    }
    counts.replaceAll((key, count) -> NAME * Math.log(1 + count / 2));
    return counts;
  }

  private static void add(
      Map<String, Double> counts, TextWords reader, String text, double weight) {
    for (String key : keys(reader.of(text))) {
      counts.merge(key, weight, Double::sum);
    }
  }

  /** All that these words may be looked up by. */
  static Set<String> keys(List<TextWord> words) {
    Set<String> keys = new HashSet<>();
    for (int i = 0; i < words.size(); i++) {
      keys.addAll(keysOf(words, i));
    }
    return keys;
  }

  /**
   * What one word may be looked up by: its stem, its groups' marks, and with the word before it.
   */
  static List<String> keysOf(List<TextWord> words, int at) {
    TextWord word = words.get(at);
    List<String> keys = new ArrayList<>(word.marks());
    if (!word.stop()) {
      keys.add(word.stem());
      for (int i = at - 1; i >= Math.max(0, at - 3); i--) {
        if (!words.get(i).stop()) {
          keys.add(words.get(i).stem() + " " + word.stem());
          break;
        }
      }
    }
    return keys;
  }
}
