package limberboard.cli;

import java.io.PrintWriter;
import java.util.Locale;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.review.DecisiveEstimate;
import limberboard.trace.review.Sensitivity;

/** Prints which estimates are worth measuring, for a person at a terminal. */
final class SensitivityText {
  private final PrintWriter out;

  SensitivityText(PrintWriter out) {
    this.out = out;
  }

  /** The first step, and the estimates that decide it. */
  void print(Sensitivity sensitivity) {
    Trace at = sensitivity.at();
    out.println(at.fault().page().title() + " on " + at.fault().fitting().boat().name() + ".");
    out.println("First step: " + named(at.next()) + ".");
    if (sensitivity.changes() == 0) {
      out.println(
          "Safety asks for it, whatever the estimates. Give its answer with --answer to look"
              + " past it.");
      return;
    }
    out.printf(
        Locale.ROOT,
        "Expected %.0f minutes; at least %.0f, whatever is done.%n",
        at.expectedMinutes(),
        at.atLeastMinutes());
    out.println();
    if (sensitivity.estimates().isEmpty()) {
      out.println(
          "No estimate, wrong by a factor of two, makes another step better by half a minute.");
      return;
    }
    out.println("Worth measuring first:");
    sensitivity.estimates().forEach(this::print);
  }

  private void print(DecisiveEstimate estimate) {
    String what =
        estimate
            .found()
            .map(
                found ->
                    "how often "
                        + found.check().id()
                        + " gives \""
                        + found.answer()
                        + "\" when it is "
                        + estimate.cause().id())
            .orElseGet(() -> "how common " + estimate.cause().id() + " is");
    out.printf(
        Locale.ROOT,
        "%6.1f min  %s: %.0f %%; were it %.0f %%, %s would come first%n",
        estimate.minutesLost(),
        what,
        100 * estimate.value(),
        100 * estimate.instead(),
        named(estimate.then()));
  }

  private static String named(NextStep step) {
    return switch (step.kind()) {
      case "check" -> "the check " + step.id();
      case "mend" -> "the mend " + step.id();
      default -> "the yard";
    };
  }
}
