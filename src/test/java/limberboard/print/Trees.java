package limberboard.print;

import java.util.List;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.trace.Trace;

/** Diagnostic trees of the small yard. */
public final class Trees {
  private Trees() {}

  /** A trace at its beginning. */
  static Trace trace(SmallYard yard, String symptom, String boat) {
    Page<Symptom> page = yard.workspace().library().symptom(symptom).orElseThrow();
    return Trace.begin(Fault.of(page, yard.boat(boat), yard.workspace().library(), List.of()));
  }

  /** The whole tree of a symptom on a boat. */
  public static DiagnosticTree of(SmallYard yard, String symptom, String boat) {
    return DiagnosticTree.of(trace(yard, symptom, boat), 0);
  }

  /** A tree of nothing but the yard: everything has been tried. */
  public static DiagnosticTree yardOnly(SmallYard yard) {
    Trace trace = trace(yard, "wet-bilge", "avocet");
    for (FaultCheck check : trace.fault().checks()) {
      trace = trace.cantTell(check.id());
    }
    for (FaultCause cause : trace.fault().causes()) {
      trace = cause.isSomethingElse() ? trace : trace.mendTried(cause.id());
    }
    return DiagnosticTree.of(trace, 0);
  }
}
