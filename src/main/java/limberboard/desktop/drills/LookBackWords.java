package limberboard.desktop.drills;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.MistakeKind;
import limberboard.drill.mark.StepMark;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/** A mark in words. Stateless. */
final class LookBackWords {
  private LookBackWords() {}

  /** What it was. */
  static String cause(DrillMark mark) {
    return "It was: " + mark.run().drill().hiddenCause().title();
  }

  /** The skill mark in one line. */
  static String skill(DrillMark mark) {
    return mark.regret() < 0.5
        ? "Nothing lost against the best plan, luck apart"
        : Minutes.words(mark.regret()) + " lost against the best plan, luck apart";
  }

  /** What stands below it. */
  static List<String> lines(DrillMark mark) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "The best plan takes "
            + Minutes.words(mark.expected())
            + " on average (an estimate; the planner is within "
            + Minutes.words(mark.doubt())
            + ").");
    lines.add(
        "This time it took "
            + Minutes.words(mark.run().minutes())
            + "; the best plan would have taken "
            + Minutes.words(mark.plan().minutes())
            + " with the same fault and the same answers. Luck is in both.");
    mark.dearest()
        .ifPresent(
            step ->
                lines.add(
                    "It cost most here: "
                        + StepOffers.title(mark.run(), step.done().step())
                        + " ("
                        + Minutes.words(step.regret())
                        + ": "
                        + step.mistake().map(MistakeKind::said).orElse("")
                        + ")."));
    if (mark.yardAtOnce()) {
      lines.add("The yard was called at once, before anything was looked at.");
    }
    certainty(mark).ifPresent(lines::add);
    return lines;
  }

  /** The whole drill in a line. */
  static String brief(DrillMark mark) {
    int dangers = mark.dangers().size();
    return Minutes.words(mark.run().minutes())
        + ", the best plan "
        + Minutes.words(mark.plan().minutes())
        + " with the same fault; "
        + (dangers == 0 ? "no danger" : CountWords.of(dangers, "danger"));
  }

  /** Dangers in one line. */
  static String dangers(DrillMark mark) {
    return mark.dangers().isEmpty()
        ? "Nothing was done that could have hurt somebody."
        : CountWords.of(mark.dangers().size(), "thing") + " could have hurt somebody:";
  }

  private static Optional<String> certainty(DrillMark mark) {
    OptionalDouble brier = Certainty.brier(mark.certainties());
    if (brier.isEmpty()) {
      return Optional.empty();
    }
    String said =
        mark.certainties().stream()
            .map(
                each ->
                    "you said "
                        + PerCent.words(each.said())
                        + " where "
                        + PerCent.words(each.known())
                        + " was known, and it was "
                        + (each.right() ? "that" : "something else"))
            .collect(Collectors.joining("; "));
    return Optional.of(
        "How sure: "
            + said
            + ". Brier\u2019s score "
            + two(brier.getAsDouble())
            + " (0 is best, always saying 50 % has 0.25), logarithmic score "
            + two(Certainty.logarithmic(mark.certainties()).orElseThrow())
            + " (0 is best, 0.69).");
  }

  private static String two(double number) {
    return String.format(Locale.ROOT, "%.2f", number);
  }

  /** What a step cost, in words. */
  static String cost(StepMark step) {
    if (step.mistake().isEmpty()) {
      return "";
    }
    return Minutes.words(step.regret())
        + " lost: "
        + step.mistake().map(MistakeKind::said).orElse("");
  }

  /** The likeliest causes before a step. */
  static String known(StepMark step) {
    return step.known().stream()
        .map(each -> each.title() + ": " + PerCent.words(each.chance()))
        .collect(Collectors.joining("\n"));
  }

  /** The best step there, in words. */
  static String best(StepMark step) {
    return Sentences.capital(step.best().kind()) + ": " + step.best().text();
  }
}
