package limberboard.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a page is called: its title and the phrases people use for it, kept with its document in the
 * form in which questions are compared with them. A name is a line, its words are separated by
 * spaces, and a word's stem and marks by commas; the title is the first line.
 *
 * @param analysis how text becomes words
 * @param stopWords words that do not count
 */
record PageNames(Analysis analysis, StopWords stopWords) {
  /** The field of the names. */
  static final String FIELD = "names";

  /** More would not fit the field. */
  private static final int MOST_CHARACTERS = 30_000;

  /** What a phrase that people use counts against the title. */
  private static final double PHRASE = 0.85;

  /** The names of a page as they are kept. */
  String kept(SearchedText page) {
    StringBuilder kept = new StringBuilder();
    for (String name : Stream.concat(Stream.of(page.title()), page.said().stream()).toList()) {
      String line =
          words(name).stream().map(word -> String.join(",", word)).collect(Collectors.joining(" "));
      if (kept.length() + line.length() < MOST_CHARACTERS) {
        kept.append(kept.length() == 0 ? "" : "\n").append(line);
      }
    }
    return kept.toString();
  }

  private List<Set<String>> words(String name) {
    List<Token> tokens = analysis.tokens(name);
    List<String> stems = tokens.stream().map(token -> Analysis.stem(token.word())).toList();
    List<Set<String>> words = new ArrayList<>();
    stems.forEach(stem -> words.add(new HashSet<>(Set.of(stem))));
    for (int i = 0; i < stems.size(); i++) {
      for (WordGroups.Match match : analysis.groups().at(stems, i)) {
        words.subList(i, i + match.length()).forEach(word -> word.add(match.mark()));
      }
    }
    List<Set<String>> counted = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      if (!stopWords.isStop(tokens.get(i).word())) {
        counted.add(words.get(i));
      }
    }
    return counted.isEmpty() ? words : counted;
  }

  /**
   * How nearly a question is one of a page's names: 1 when it asks for just the title's words. It
   * is the share of the question that is in the name, times the share of the name that is asked
   * for.
   *
   * @param kept the page's names as they are kept
   */
  static double nearness(String kept, List<Slot> slots) {
    return nearness(kept, slots, false);
  }

  /**
   * The same, counting only the names that tell of the fault asked about: oil is not what somebody
   * asks for whose oil leaks.
   *
   * @param kept the page's names as they are kept
   */
  static double nearnessOfFault(String kept, List<Slot> slots) {
    return nearness(kept, slots, true);
  }

  private static double nearness(String kept, List<Slot> slots, boolean fault) {
    double asked = slots.stream().mapToDouble(Slot::weight).sum();
    Set<String> terms = new HashSet<>();
    slots.forEach(slot -> terms.addAll(slot.terms().keySet()));
    double nearest = 0;
    double counts = 1;
    for (String name : kept.split("\n", -1)) {
      if (!fault || tells(name, slots)) {
        nearest = Math.max(nearest, counts * nearnessOfOne(name, slots, terms) / asked);
      }
      counts = PHRASE;
    }
    return nearest;
  }

  private static boolean tells(String name, List<Slot> slots) {
    Set<String> forms = new HashSet<>(Arrays.asList(name.split("[ ,]")));
    return slots.stream()
        .anyMatch(slot -> slot.fault() && slot.terms().keySet().stream().anyMatch(forms::contains));
  }

  private static double nearnessOfOne(String name, List<Slot> slots, Set<String> terms) {
    Set<String> all = new HashSet<>();
    int words = 0;
    int covered = 0;
    for (String word : name.split(" ")) {
      List<String> forms = Arrays.asList(word.split(","));
      all.addAll(forms);
      words++;
      covered += forms.stream().anyMatch(terms::contains) ? 1 : 0;
    }
    if (covered == 0) {
      return 0;
    }
    double answered = 0;
    for (Slot slot : slots) {
      if (slot.terms().keySet().stream().anyMatch(all::contains)) {
        answered += slot.weight();
      }
    }
    return answered * covered / words;
  }
}
