package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.search.TextWords.TextWord;

/**
 * How people say the answers to each check, word by word, and how rare each word is among them.
 * Immutable.
 */
final class SaidAnswers {
  private final Map<String, List<OfCheck>> checks = new HashMap<>();
  private final Map<String, Integer> checksWith = new HashMap<>();
  private int all;

  /**
   * One word of a phrase.
   *
   * @param keys its stem and its groups
   * @param denied whether a negation reaches it
   */
  record Key(Set<String> keys, boolean denied) {
    /** Whether a word of a letter is this one, said or denied alike. */
    boolean is(SaidWord word) {
      return word.denied() == denied && isNamed(word.word());
    }

    /** Whether a word of a letter is this one, however it is meant. */
    boolean isNamed(TextWord word) {
      return keys.contains(word.stem()) || word.marks().stream().anyMatch(keys::contains);
    }
  }

  /**
   * A way of saying an answer.
   *
   * @param answer the answer
   * @param words the words that say it
   * @param keys all that its words may be learnt by
   */
  record Phrase(String answer, List<Key> words, Set<String> keys) {}

  /**
   * A check.
   *
   * @param id its id
   * @param about the words of what it asks
   * @param phrases how its answers are said
   */
  record OfCheck(String id, List<Key> about, List<Phrase> phrases) {
    /** Its answers, in the page's order. */
    List<String> answers() {
      return phrases.stream().map(Phrase::answer).distinct().toList();
    }
  }

  SaidAnswers(TextParser parser, List<Page<Symptom>> symptoms) {
    for (Page<Symptom> symptom : symptoms) {
      List<OfCheck> read = new ArrayList<>();
      for (Check check : symptom.details().checks()) {
        OfCheck said = read(parser, check);
        read.add(said);
        count(said);
      }
      checks.put(symptom.id(), read);
    }
  }

  private static OfCheck read(TextParser parser, Check check) {
    List<Key> about =
        keys(parser.read("", check.ask() + " " + check.id().replace('-', ' ')), false);
    List<Phrase> phrases = new ArrayList<>();
    for (String answer : check.answers()) {
      phrases.add(phrase(answer, parser.read("", answer.replace('-', ' '))));
      for (String said : check.saidAs().getOrDefault(answer, List.of())) {
        phrases.add(phrase(answer, parser.read("", said)));
      }
    }
    phrases.removeIf(phrase -> phrase.words().isEmpty());
    return new OfCheck(check.id(), about, phrases);
  }

  private static Phrase phrase(String answer, LetterText text) {
    return new Phrase(answer, keys(text, true), TopicExamples.keys(text.words()));
  }

  /** The words that say something; of a phrase that has none, all. */
  private static List<Key> keys(LetterText text, boolean all) {
    List<Key> keys = new ArrayList<>();
    for (SaidWord word : text.words()) {
      if (!word.word().stop()) {
        keys.add(key(word));
      }
    }
    if (keys.isEmpty() && all) {
      text.words().forEach(word -> keys.add(key(word)));
    }
    return keys;
  }

  private static Key key(SaidWord word) {
    Set<String> keys = new HashSet<>(word.word().marks());
    keys.add(word.word().stem());
    return new Key(keys, word.denied());
  }

  private void count(OfCheck check) {
    all++;
    Set<String> keys = new HashSet<>();
    check.phrases().forEach(phrase -> phrase.words().forEach(word -> keys.addAll(word.keys())));
    check.about().forEach(word -> keys.addAll(word.keys()));
    keys.forEach(key -> checksWith.merge(key, 1, Integer::sum));
  }

  /** The checks of a symptom. */
  List<OfCheck> of(String symptom) {
    return checks.getOrDefault(symptom, List.of());
  }

  /** How rare a word is: the logarithm of the checks there are for each that has it. */
  double rarity(Key word) {
    int most = 1;
    for (String key : word.keys()) {
      most = Math.max(most, checksWith.getOrDefault(key, 0));
    }
    return Math.log(1 + (double) all / most);
  }
}
