package limberboard.proofread.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import limberboard.words.Phrases;

/**
 * Words to look for in sentences, in whatever form. Words stand one after another; where three
 * points stand between them, others may stand in between: <i>part … hose</i>. A word with {@code =}
 * before it counts only as it is written: <i>=mains</i> is not in <i>main halyard</i>. Immutable.
 *
 * @param written as it was written
 * @param parts the words before, between and after the points
 */
public record Phrase(String written, List<List<String>> parts) {
  private static final String GAP = "…";
  private static final String EXACTLY = "=";

  /** Copies the lists. */
  public Phrase {
    parts = parts.stream().map(List::copyOf).toList();
  }

  /** A phrase as people write it; three full stops are three points. */
  public static Phrase of(String written) {
    List<List<String>> parts = new ArrayList<>();
    for (String part : written.replace("...", GAP).split(GAP)) {
      List<String> words = new ArrayList<>();
      for (String word : part.strip().split("\\s+")) {
        if (word.startsWith(EXACTLY)) {
          words.add(word.toLowerCase(Locale.ROOT));
        } else {
          words.addAll(Phrases.stems(word.replaceAll("['’]s$", "")));
        }
      }
      if (!words.isEmpty()) {
        parts.add(words);
      }
    }
    return new Phrase(written.replace(EXACTLY, ""), parts);
  }

  /** All of a list. */
  public static List<Phrase> all(List<String> written) {
    return written.stream().map(Phrase::of).toList();
  }

  /**
   * Where its first word stands in a sentence.
   *
   * @return a number of words from the beginning, or -1
   */
  public int in(Sentence sentence) {
    int first = -1;
    int at = 0;
    for (List<String> part : parts) {
      int found = find(part, sentence, at);
      if (found < 0) {
        return -1;
      }
      first = first < 0 ? found : first;
      at = found + part.size();
    }
    return first;
  }

  private static int find(List<String> part, Sentence sentence, int from) {
    for (int i = from; i + part.size() <= sentence.stems().size(); i++) {
      int j = 0;
      while (j < part.size() && is(part.get(j), sentence, i + j)) {
        j++;
      }
      if (j == part.size()) {
        return i;
      }
    }
    return -1;
  }

  private static boolean is(String word, Sentence sentence, int at) {
    return word.startsWith(EXACTLY)
        ? word.substring(1).equals(sentence.words().get(at))
        : word.equals(sentence.stems().get(at));
  }
}
