package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.WordRegression.Example;

/**
 * Sentences that tell of danger, and such as sound like it and do not: those of the list that comes
 * with the program, and those of recorded letters. Safe for use by several threads.
 */
final class DangerSentences {
  private static final String CALM = "nothing urgent";

  private final TextParser parser;
  private final DangerFields fields;
  private final List<String> whats = new ArrayList<>();
  private final List<Example> examples = new ArrayList<>();
  private final Map<RecordedLetter, List<Set<String>>> known = new ConcurrentHashMap<>();

  DangerSentences(TextParser parser, DangerFields fields) {
    this.parser = parser;
    this.fields = fields;
    for (String line : WordList.lines("danger.txt")) {
      if (line.startsWith("[")) {
        whats.add(line.substring(1, line.length() - 1));
      } else {
        Set<String> keys = keys(parser.example(line).words());
        examples.add(new Example(keys, Set.of(whats.size() - 1), 1));
      }
    }
  }

  /** What may be dangerous; among them that nothing is. */
  List<String> whats() {
    return whats;
  }

  /** The number of what tells of no danger. */
  int calm() {
    return whats.indexOf(CALM);
  }

  /** The sentences of the list. */
  List<Example> examples() {
    return examples;
  }

  /** What the sentences of a recorded letter have, one by one. */
  List<Set<String>> of(RecordedLetter letter) {
    return known.computeIfAbsent(
        letter,
        each -> {
          LetterText text = parser.recorded(each);
          List<Set<String>> all = new ArrayList<>();
          for (int sentence = 0; sentence < text.sentences(); sentence++) {
            all.add(keys(text.ofSentence(sentence)));
          }
          return all;
        });
  }

  /** What those sentences of a recorded letter have that a person says tell of danger. */
  Map<Set<String>, Integer> dangers(RecordedLetter letter) {
    Map<Set<String>, Integer> dangers = new HashMap<>();
    for (Expected.Danger danger : letter.expected().dangers()) {
      int what = whats.indexOf(danger.what());
      for (int sentence : sentences(parser.recorded(letter), danger.words())) {
        if (what >= 0) {
          dangers.put(of(letter).get(sentence), what);
        }
      }
    }
    return dangers;
  }

  private static Set<Integer> sentences(LetterText text, String words) {
    Set<Integer> found = new TreeSet<>();
    int from = text.text().replaceAll("\\s", " ").indexOf(words);
    if (from >= 0) {
      text.words().stream()
          .filter(word -> word.word().start() >= from)
          .filter(word -> word.word().end() <= from + words.length())
          .forEach(word -> found.add(word.sentence()));
    }
    return found;
  }

  /**
   * What a sentence has: stems, marks of groups, words that follow each other, the fields that it
   * meets, one by one and two together; apart from these what is denied, over or supposed.
   */
  Set<String> keys(List<SaidWord> words) {
    Set<String> keys = new HashSet<>();
    for (int i = 0; i < words.size(); i++) {
      SaidWord word = words.get(i);
      String how = word.isSo() ? "" : "~";
      if (!word.word().stop()) {
        keys.add(how + word.word().stem());
      }
      word.word().marks().forEach(mark -> keys.add(how + mark));
      if (i > 0) {
        keys.add(how + words.get(i - 1).word().stem() + " " + word.word().stem());
      }
      if (word.asked()) {
        keys.add("?");
      }
    }
    List<String> met = fields.in(words).stream().sorted().map(field -> "%" + field).toList();
    for (int i = 0; i < met.size(); i++) {
      keys.add(met.get(i));
      for (int j = i + 1; j < met.size(); j++) {
        keys.add(met.get(i) + met.get(j));
      }
    }
    return keys;
  }
}
