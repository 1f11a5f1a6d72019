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
    Branch at = root;
    for (TextWord word : reader.of(phrase)) {
      at = at.branches.computeIfAbsent(word.word(), key -> new Branch());
    }
    if (at != root && !at.labels.contains(label)) {
      at.labels.add(label);
    }
  }

  /** All phrases in a row of words, in order. */
  List<Match> in(List<TextWord> words) {
    List<Match> found = new ArrayList<>();
    for (int from = 0; from < words.size(); from++) {
      Branch at = root.branches.get(words.get(from).word());
      for (int to = from + 1; at != null; to++) {
        for (String label : at.labels) {
          found.add(new Match(label, from, to));
        }
        at = to < words.size() ? at.branches.get(words.get(to).word()) : null;
      }
    }
    return found;
  }
}
