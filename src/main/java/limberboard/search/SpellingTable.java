package limberboard.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts words and phrases right that are on the list of trade spellings; the longest goes first. */
final class SpellingTable {
  private final Map<List<String>, List<String>> meant = new HashMap<>();
  private int longest;

  SpellingTable(SearchWords words, Analysis analysis) {
    words
        .spellings()
        .forEach(
            (written, right) -> {
              List<String> from = words(analysis, written);
              List<String> to = words(analysis, right);
              if (!from.isEmpty() && !from.equals(to)) {
                meant.putIfAbsent(from, to);
                longest = Math.max(longest, from.size());
              }
            });
  }

  private static List<String> words(Analysis analysis, String phrase) {
    return analysis.tokens(phrase).stream().map(Token::word).toList();
  }

  /**
   * A stretch of a text put right.
   *
   * @param written what was written
   * @param meant what is meant by it; the same when it is not on the list
   */
  record Stretch(List<Token> written, List<Token> meant) {
    /** Whether something else is meant than was written. */
    boolean corrected() {
      return !written.equals(meant);
    }
  }

  /** The text in stretches; what is not on the list stays as it is, word by word. */
  List<Stretch> correct(List<Token> tokens) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < tokens.size(); ) {
      Optional<Integer> length = lengthAt(tokens, i);
      if (length.isPresent()) {
        List<Token> written = tokens.subList(i, i + length.get());
        stretches.add(new Stretch(written, replaced(written)));
      } else {
        List<Token> word = List.of(tokens.get(i));
        stretches.add(new Stretch(word, word));
      }
      i += length.orElse(1);
    }
    return stretches;
  }

  private Optional<Integer> lengthAt(List<Token> tokens, int start) {
    for (int length = Math.min(longest, tokens.size() - start); length > 0; length--) {
      if (meant.containsKey(keyOf(tokens.subList(start, start + length)))) {
        return Optional.of(length);
      }
    }
    return Optional.empty();
  }

  private List<Token> replaced(List<Token> written) {
    int start = written.get(0).start();
    int end = written.get(written.size() - 1).end();
    return meant.get(keyOf(written)).stream().map(word -> new Token(word, start, end)).toList();
  }

  private static List<String> keyOf(List<Token> tokens) {
    return tokens.stream().map(Token::word).toList();
  }
}
