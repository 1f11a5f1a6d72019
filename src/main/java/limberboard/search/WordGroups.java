package limberboard.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The groups of words and phrases that stand for each other, found in a row of stems. Every group
 * has a mark, a word that no text contains; index and questions carry the marks beside the words
 * themselves. All groups that a stretch of text belongs to are found, not only the longest. Is not
 * changed after it was made.
 */
final class WordGroups {
  private final Branch root = new Branch();
  private final Set<String> known = new HashSet<>();
  private int longest = 1;

  /**
   * A stretch of stems that belongs to a group.
   *
   * @param mark the group's mark
   * @param length in stems
   */
  record Match(String mark, int length) {}

  private static final class Branch {
    private final Map<String, Branch> branches = new HashMap<>();
    private final List<String> marks = new ArrayList<>();
  }

  /**
   * Adds a phrase to a group.
   *
   * @param group the group's number
   * @param stems the phrase's stems; a phrase without any is passed over
   */
  void add(int group, List<String> stems) {
    if (stems.isEmpty()) {
      return;
    }
    Branch at = root;
    for (String stem : stems) {
      at = at.branches.computeIfAbsent(stem, key -> new Branch());
    }
    String mark = "=" + group;
    if (!at.marks.contains(mark)) {
      at.marks.add(mark);
    }
    known.addAll(stems);
    longest = Math.max(longest, stems.size());
  }

  /** The longest phrase, in stems; at least 1. */
  int longest() {
    return longest;
  }

  /** Whether any phrase contains this stem. */
  boolean knows(String stem) {
    return known.contains(stem);
  }

  /** All groups that a stretch beginning at this place belongs to. */
  List<Match> at(List<String> stems, int start) {
    List<Match> matches = new ArrayList<>();
    Branch at = root;
    for (int i = start; i < stems.size(); i++) {
      at = at.branches.get(stems.get(i));
      if (at == null) {
        break;
      }
      for (String mark : at.marks) {
        matches.add(new Match(mark, i - start + 1));
      }
    }
    return matches;
  }
}
