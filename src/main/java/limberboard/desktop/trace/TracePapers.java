package limberboard.desktop.trace;

import java.util.function.BiConsumer;
import java.util.function.Supplier;
import limberboard.desktop.base.Session;
import limberboard.desktop.read.Papers;
import limberboard.desktop.tree.TreeOut;
import limberboard.library.Library;
import limberboard.print.drawing.TreeDrawing;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.TraceSheet;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.NextStep;

/**
 * Prints and saves where a trace stands, and its whole tree. For the event thread only.
 *
 * @param session tells library and boat
 * @param model the trace
 * @param papers prints and saves
 */
record TracePapers(Session session, TraceModel model, Papers papers) implements TreeOut {

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

  @Override
  public void print(DiagnosticTree tree) {
    papers.print(name("tree"), () -> new TreeSheet().of(tree));
  }

  @Override
  public void save(DiagnosticTree tree) {
    papers.save(name("tree"), () -> new TreeSheet().of(tree));
  }

  @Override
  public void draw(DiagnosticTree tree) {
    papers.saveText(name("tree") + ".svg", () -> new TreeDrawing().whole(tree));
  }

  /** What it is, the symptom, and the boat. */
  private String name(String what) {
    return what
        + model.trace().map(trace -> "-" + trace.fault().page().id()).orElse("")
        + session.boat().map(boat -> "-" + boat.id()).orElse("");
  }
}
