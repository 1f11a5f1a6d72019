package limberboard.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.Cause;
import limberboard.library.Check;
import limberboard.library.Likelihood;

/**
 * What an answer says, in words: for which causes it speaks, because it is found with them more
 * often than if all answers were alike, and against which. Chances that the page leaves out are
 * what the file formats make of them: they share what is left to 1.
 */
final class AnswerWords {
  private static final double CLEARLY_MORE = 1.2;
  private static final double CLEARLY_LESS = 0.6;
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
    String speaksFor = said(chances, alike * CLEARLY_MORE, Double.POSITIVE_INFINITY);
    String against = said(chances, Double.NEGATIVE_INFINITY, alike * CLEARLY_LESS);
    List<Inline> text = new ArrayList<>();
    if (!speaksFor.isEmpty()) {
      text.add(new Inline.Text("Speaks for: " + speaksFor + "."));
    }
    if (!against.isEmpty()) {
      if (!text.isEmpty()) {
        text.add(new Inline.LineBreak());
      }
      text.add(new Inline.Text("Speaks against: " + against + "."));
    }
    return text.isEmpty() ? Inline.text("Tells nothing by itself.") : text;
  }

  /** Cause title to how likely the answer is with it, the likeliest first. */
  private Map<String, Double> chances(String answer) {
    Map<String, Double> chances = new LinkedHashMap<>();
    for (Cause cause : causes) {
      if (mentions(cause.id())) {
        chances.put(cause.title(), chance(answer, cause.id()));
      }
    }
    if (mentions(Check.OTHERS)) {
      chances.put(ANY_OTHER, chance(answer, Check.OTHERS));
    }
    return chances;
  }

  private boolean mentions(String cause) {
    return check.finds().values().stream().anyMatch(finds -> finds.containsKey(cause));
  }

  private double chance(String answer, String cause) {
    double given = 0;
    int open = 0;
    for (String each : check.answers()) {
      Likelihood likelihood = likelihood(each, cause);
      given += likelihood == null ? 0 : likelihood.value();
      open += likelihood == null ? 1 : 0;
    }
    Likelihood own = likelihood(answer, cause);
    if (own == null) {
      return Math.max(0, 1 - given) / open;
    }
    return open == 0 || given > 1 ? own.value() / given : own.value();
  }

  private Likelihood likelihood(String answer, String cause) {
    return check.finds().getOrDefault(answer, Map.of()).get(cause);
  }

  private static String said(Map<String, Double> chances, double least, double most) {
    List<String> said =
        chances.entrySet().stream()
            .filter(entry -> entry.getValue() >= least && entry.getValue() <= most)
            .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()))
            .map(entry -> entry.getKey() + " (" + word(entry.getValue()) + ")")
            .toList();
    return String.join("; ", said);
  }

  /** The nearest word of the likelihood scale. */
  private static String word(double chance) {
    String nearest =
        Likelihood.scale().entrySet().stream()
            .min(Comparator.comparingDouble(entry -> Math.abs(entry.getValue() - chance)))
            .map(Map.Entry::getKey)
            .orElseThrow();
    return nearest.equals("even") ? "as often as not" : nearest.replace('-', ' ');
  }
}
