package limberboard.trace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;

/**
 * The little workspace {@code leak} among the test resources: one symptom, and two boats of eleven
 * years of which only Knot has a bowsprit.
 */
final class Leak {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private static final Workspace WORKSPACE = read();

  private Leak() {}

  static Workspace workspace() {
    return WORKSPACE;
  }

  private static Workspace read() {
    try {
      Path root = Path.of(Leak.class.getResource("leak").toURI());
      return new WorkspaceReader(new WorkspaceFolders(root)).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  static Fault on(String boat, List<RecordedCase> cases) {
    return of(boat, workspace().library(), cases);
  }

  static Fault of(String boat, Library library, List<RecordedCase> cases) {
    Workspace workspace = workspace();
    return Fault.of(
        workspace.library().symptom("water-forward").orElseThrow(),
        new Fitting(workspace.boat(boat).orElseThrow(), TODAY),
        library,
        cases);
  }

  /** Knot's fault without recorded cases. */
  static Fault onKnot() {
    return on("knot", List.of());
  }

  static FaultCause cause(Fault fault, String id) {
    return fault.causes().get(fault.causeNumber(id));
  }

  static FaultCheck check(Fault fault, String id) {
    return fault.checks().get(fault.checkNumber(id));
  }
}
