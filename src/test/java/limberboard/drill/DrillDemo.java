package limberboard.drill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.Fault;

/** Drills on the demo's pages and boats. */
public final class DrillDemo {
  /** The day they are played on. */
  public static final LocalDate ON = LocalDate.of(2026, 3, 15);

  private static final Workspace WORKSPACE = read();

  private DrillDemo() {}

  private static Workspace read() {
    try {
      return new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The demo. */
  public static Workspace workspace() {
    return WORKSPACE;
  }

  /** A symptom on a boat. */
  public static Fault fault(String symptom, String boat) {
    Fitting fitting = new Fitting(WORKSPACE.boat(boat).orElseThrow(), ON);
    return Fault.of(
        WORKSPACE.library().symptom(symptom).orElseThrow(),
        fitting,
        WORKSPACE.library(),
        WORKSPACE.cases());
  }

  /** A drill on it. */
  public static Drill drill(Fault fault, long seed, int hints) {
    return Drill.of(
        new DrillOrder(fault.page().id(), fault.fitting().boat().id(), ON, seed, hints), fault);
  }
}
