package limberboard.trace;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/** The repository's own symptoms on its own boats. */
public final class Articles {
  private static final LocalDate A_DAY = LocalDate.of(2026, 6, 1);

  private Articles() {}

  /** One symptom on one boat that it fits. */
  public record Fitted(Page<Symptom> symptom, Boat boat, Fault fault) {}

  public static Workspace workspace() throws IOException {
    return new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  public static List<Fitted> fitted(Workspace workspace) {
    List<Fitted> all = new ArrayList<>();
    for (Page<Symptom> symptom : workspace.library().all(Symptom.class)) {
      for (Boat boat : workspace.boats()) {
        Fitting fitting = new Fitting(boat, A_DAY);
        if (fitting.fits(symptom.head().fits())) {
          Fault fault = Fault.of(symptom, fitting, workspace.library(), workspace.cases());
          all.add(new Fitted(symptom, boat, fault));
        }
      }
    }
    return all;
  }
}
