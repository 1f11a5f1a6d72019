package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.search.TextWords;
import limberboard.search.TextWords.TextWord;

/**
 * PhraseFinder with labels, found in rows of words word by word; all that stand there are found.
 */
final class PhraseFinder {
  private final Branch root = new Branch();

  /**
   * A phrase that stands in a text.
   *
   * @param label what it stands for
   * @param from its first word
   * @param to the word behind its last
   */
  record Match(String label, int from, int to) {
    /** Number of words. */
    int length() {
      return to - from;
    }
  }

  private static final class Branch {
    private final Map<String, Branch> branches = new HashMap<>();
    private final List<String> labels = new ArrayList<>();
  }

  /** Adds a phrase. */
  void add(TextWords reader, String phrase, String label) {
    add(reader.of(phrase).stream().map(TextWord::word).toList(), label);
  }

  /** Adds a phrase that stands for all forms of its words. */
  void addStems(TextWords reader, String phrase, String label) {
    add(reader.of(phrase).stream().map(TextWord::stem).toList(), label);
  }

  private void add(List<String> phrase, String label) {
    Branch at = root;
    for (String word : phrase) {
      at = at.branches.computeIfAbsent(word, key -> new Branch());
    }
    if (at != root && !at.labels.contains(label)) {
      at.labels.add(label);
    }
  }

  /** All phrases in a row of words, in order. */
  List<Match> in(List<TextWord> words) {
    return find(words.stream().map(TextWord::word).toList());
  }

  /** All phrases in a row of words, in whatever form the words stand, in order. */
  List<Match> inStems(List<TextWord> words) {
    return find(words.stream().map(TextWord::stem).toList());
  }

  private List<Match> find(List<String> words) {
    List<Match> found = new ArrayList<>();
    for (int from = 0; from < words.size(); from++) {
      Branch at = root.branches.get(words.get(from));
      for (int to = from + 1; at != null; to++) {
        for (String label : at.labels) {
          found.add(new Match(label, from, to));
        }
        at = to < words.size() ? at.branches.get(words.get(to)) : null;
      }
    }
    return found;
  }
}
