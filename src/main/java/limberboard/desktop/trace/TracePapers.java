package limberboard.desktop.trace;

import java.util.function.BiConsumer;
import java.util.function.Supplier;
import limberboard.desktop.base.Session;
import limberboard.desktop.read.Papers;
import limberboard.desktop.tree.TreeOut;
import limberboard.desktop.tree.TreePapers;
import limberboard.library.Library;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.TraceSheet;
import limberboard.trace.NextStep;

/**
 * Prints and saves where a trace stands, and leads to its tree's papers. For the event thread only.
 *
 * @param session tells library and boat
 * @param model the trace
 * @param papers prints and saves
 */
record TracePapers(Session session, TraceModel model, Papers papers) {

  /** Prints where the trace stands; without effect when there is none. */
  void printTrace() {
    trace(papers::print);
  }

  /** Saves where the trace stands as PDF; without effect when there is none. */
  void saveTrace() {
    trace(papers::save);
  }

  private void trace(BiConsumer<String, Supplier<CutPage>> to) {
    Library library = session.library();
    model
        .trace()
        .ifPresent(
            trace -> {
              NextStep shown = model.step().orElseGet(trace::next);
              to.accept(name("trace"), () -> new TraceSheet(library).of(trace, shown));
            });
  }

  /** Prints and saves the tree. */
  TreeOut trees() {
    return new TreePapers(session, papers);
  }

  /** What it is, the symptom, and the boat. */
  private String name(String what) {
    return what
        + model.trace().map(trace -> "-" + trace.fault().page().id()).orElse("")
        + session.boat().map(boat -> "-" + boat.id()).orElse("");
  }
}
