package limberboard.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.Progress;
import limberboard.drill.learn.RepeatRule;
import limberboard.drill.mark.Calibration;
import limberboard.drill.mark.Certainty;
import limberboard.words.CountWords;

/** A student's progress as {@code drill mark --student} prints it; the keys stay. */
record ProgressView(
    String student,
    int drills,
    List<SymptomView> symptoms,
    Map<String, Progress.Cost> systems,
    Map<String, Double> mistakes,
    int dangers,
    OptionalDouble brier,
    OptionalDouble logarithmic,
    List<Calibration.Said> calibration) {

  /** A symptom, with when it comes back. */
  record SymptomView(
      String symptom, int drills, double regret, int dangers, double easiness, String due) {}

  static ProgressView of(Progress progress, LocalDate today) {
    List<SymptomView> symptoms = new ArrayList<>();
    progress
        .symptoms()
        .forEach(
            (symptom, cost) -> {
              RepeatRule rule = progress.repeat(symptom, today);
              symptoms.add(
                  new SymptomView(
                      symptom,
                      cost.drills(),
                      cost.regret(),
                      cost.dangers(),
                      rule.easiness(),
                      rule.due().toString()));
            });
    Map<String, Double> mistakes = new LinkedHashMap<>();
    progress.mistakes().forEach((kind, cost) -> mistakes.put(kind.word(), cost));
    List<Certainty> said = progress.certainties();
    return new ProgressView(
        progress.student(),
        progress.drills().size(),
        symptoms,
        progress.systems(),
        mistakes,
        progress.drills().stream().mapToInt(DrillRecord::dangers).sum(),
        Certainty.brier(said),
        Certainty.logarithmic(said),
        Calibration.of(said, Calibration.USUAL_CLASSES).classes());
  }

  void print(PrintWriter out) {
    out.println(
        student + ": " + CountWords.of(drills, "drill") + ", " + CountWords.of(dangers, "danger"));
    out.println();
    out.println("Minutes lost against the best plan, luck apart:");
    for (SymptomView each : symptoms) {
      out.printf(
          Locale.ROOT,
          "%7.1f  %s, drilled %s, comes back on %s%n",
          each.regret(),
          each.symptom(),
          CountWords.times(each.drills()),
          each.due());
    }
    systems.forEach(
        (system, cost) ->
            out.printf(Locale.ROOT, "%7.1f  in all of the system %s%n", cost.regret(), system));
    mistakes.forEach((kind, cost) -> out.printf(Locale.ROOT, "%7.1f  by %s%n", cost, kind));
    if (brier.isPresent()) {
      out.printf(
          Locale.ROOT,
          "%nHow sure: Brier's score %.2f, logarithmic %.2f%n",
          brier.getAsDouble(),
          logarithmic.orElseThrow());
      for (Calibration.Said each : calibration) {
        out.printf(
            Locale.ROOT,
            "  said %3.0f to %3.0f %%: %d times, right %.0f %%%n",
            100 * each.from(),
            100 * each.to(),
            each.count(),
            100 * each.right());
      }
    }
  }
}
