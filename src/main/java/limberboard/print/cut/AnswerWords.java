package limberboard.print.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.print.page.Inline;
import limberboard.words.ChanceWords;

/**
 * What an answer says, in words: for which causes it speaks, because it is found with them more
 * often than if all answers were alike, and against which. Chances that the page leaves out are
 * what the file formats make of them: they share what is left to 1.
 */
final class AnswerWords {
  private static final double CLEARLY_MORE = 1.2;
  private static final double CLEARLY_LESS = 0.6;
  private static final int LONGEST_LIST = 4;
  private static final String ANY_OTHER = "any other cause";

  private final Check check;
  private final List<Cause> causes;

  /** Words for a check's answers; the causes are those that the boat can have. */
  AnswerWords(Check check, List<Cause> causes) {
    this.check = check;
    this.causes = causes;
  }

  /** What this answer says. */
  List<Inline> of(String answer) {
    double alike = 1.0 / check.answers().size();
    Map<String, Double> chances = chances(answer);
    Map<String, Double> more = between(chances, alike * CLEARLY_MORE, Double.POSITIVE_INFINITY);
    Map<String, Double> less = between(chances, Double.NEGATIVE_INFINITY, alike * CLEARLY_LESS);
    Map<String, Double> neither = new LinkedHashMap<>(chances);
    neither.keySet().removeAll(more.keySet());
    neither.keySet().removeAll(less.keySet());
    List<Inline> text = new ArrayList<>();
    if (!more.isEmpty()) {
      text.add(new Inline.Text("Speaks for: " + said(more) + "."));
    }
    if (!less.isEmpty()) {
      if (!text.isEmpty()) {
        text.add(new Inline.LineBreak());
      }
      text.add(new Inline.Text(against(less, neither, more.isEmpty())));
    }
    return text.isEmpty() ? Inline.text("Tells nothing by itself.") : text;
  }

  /** Names what an answer speaks against; a long list is said by what is not on it. */
  private static String against(
      Map<String, Double> less, Map<String, Double> neither, boolean forNothing) {
    if (less.size() <= LONGEST_LIST || neither.size() >= less.size()) {
      return "Speaks against: " + said(less) + ".";
    }
    if (neither.isEmpty()) {
      return "Speaks against all " + (forNothing ? "on the list." : "others.");
    }
    String except = String.join("; ", neither.keySet());
    return "Speaks against all " + (forNothing ? "but: " : "others but: ") + except + ".";
  }

  /** Cause title to how likely the answer is with it. */
  private Map<String, Double> chances(String answer) {
    Map<String, Double> chances = new LinkedHashMap<>();
    int at = check.answers().indexOf(answer);
    for (Cause cause : causes) {
      if (check.mentions(cause.id())) {
        chances.put(cause.title(), check.chances(cause.id())[at]);
      }
    }
    if (check.mentions(Check.OTHERS)) {
      chances.put(ANY_OTHER, check.chances(Check.OTHERS)[at]);
    }
    return chances;
  }

  /** Those whose chance lies in the range, the likeliest first. */
  private static Map<String, Double> between(
      Map<String, Double> chances, double least, double most) {
    Map<String, Double> between = new LinkedHashMap<>();
    chances.entrySet().stream()
        .filter(entry -> entry.getValue() >= least && entry.getValue() <= most)
        .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()))
        .forEach(entry -> between.put(entry.getKey(), entry.getValue()));
    return between;
  }

  private static String said(Map<String, Double> chances) {
    return chances.entrySet().stream()
        .map(entry -> entry.getKey() + " (" + ChanceWords.often(entry.getValue()) + ")")
        .collect(Collectors.joining("; "));
  }
}
