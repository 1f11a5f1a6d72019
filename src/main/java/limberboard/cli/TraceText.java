package limberboard.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.cases.SimilarCases;
import limberboard.library.page.Check;
import limberboard.library.page.Model;
import limberboard.library.value.Skill;
import limberboard.trace.CautionsRead;
import limberboard.trace.Contradiction;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.SecondFault;
import limberboard.trace.Trace;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/** Prints a trace for a person at a terminal: cautions first, their whole text at the end. */
final class TraceText {
  private static final int SHOWN_CAUSES = 5;

  private final PrintWriter out;

  TraceText(PrintWriter out) {
    this.out = out;
  }

  /** Where a trace stands: cautions, chances, what is next. */
  void state(Trace trace) {
    state(trace, trace.next());
  }

  /** The same with a step that is taken next, whichever it is. */
  void state(Trace trace, NextStep next) {
    List<WorkCaution> cautions = WorkCautions.ofStep(trace.fault().first(), next.cautions());
    CautionsText said = new CautionsText(out);
    said.print(cautions, CautionsRead.NONE);
    chances(trace);
    out.println();
    next(next);
    out.printf(
        Locale.ROOT,
        "Expected from here: no more than about %.0f minutes.%n",
        trace.expectedMinutes());
    said.inFull(cautions);
  }

  /** The likeliest causes, and a contradiction if there is one. */
  void chances(Trace trace) {
    for (RankedCause ranked : trace.ranking().stream().limit(SHOWN_CAUSES).toList()) {
      out.printf(
          Locale.ROOT,
          "%5.1f %%  %-21s %s%n",
          100 * ranked.chance(),
          ranked.word(),
          ranked.cause().title());
    }
    out.println("         Chances before any answer: " + trace.fault().chancesFrom() + ".");
    trace.contradiction().map(Contradiction::text).ifPresent(text -> out.println("NOTE: " + text));
    trace.secondFault().map(SecondFault::text).ifPresent(text -> out.println("NOTE: " + text));
  }

  /** What to do next, with what must be opened and why. */
  void next(NextStep step) {
    out.println(heading(step) + step.text());
    if (step instanceof NextStep.DoCheck check) {
      Check made = check.check().check();
      out.println(
          made.skill() == Skill.LICENSED
              ? "  Only a person licensed for it may do this."
              : "  How: " + made.how());
      made.safety().ifPresent(safe -> out.println("  If it is not so, or you can't tell: " + safe));
    }
    if (step instanceof NextStep.MakeSafe safe) {
      out.println("  " + safe.how());
      out.println("  " + step.why());
      return;
    }
    if (!step.toOpen().isEmpty()) {
      List<String> titles = step.toOpen().stream().map(Model.Access::title).toList();
      out.println("  First: " + String.join("; then ", titles) + ".");
    }
    if (step instanceof NextStep.DoCheck check && check.check().answered() > 0) {
      out.println("  What its answers mean: " + check.check().from() + ".");
    }
    out.println("  About " + Minutes.words(step.minutes()) + ". " + step.why());
  }

  /** Earlier cases like the trace, each with the reason. */
  void earlier(List<SimilarCases.Similar> cases) {
    for (SimilarCases.Similar each : cases) {
      out.println(
          "Like an earlier case: "
              + each.recorded().id()
              + ", "
              + Sentences.spoken(each.recorded().cause().orElse("not known"))
              + " ("
              + each.reason()
              + ").");
    }
  }

  private static String heading(NextStep step) {
    if (step instanceof NextStep.DoCheck) {
      return "Check: ";
    }
    return step instanceof NextStep.DoMend ? "Mend: " : "";
  }
}
