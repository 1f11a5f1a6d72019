package limberboard.trace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.TestWorkspace;
import limberboard.trace.review.PageReview;

/**
 * A made-up workspace in which the yard costs 240 minutes, and Knot (with a packed stern gland) and
 * Ruff (with a lip seal) lie. Tests write their own symptom, {@code odd}, and mends.
 */
public final class Yard {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private final TestWorkspace files;

  public Yard(Path folder) {
    files = new TestWorkspace(folder);
  }

  public Yard withBoats() {
    return boat("knot", "plover-20", 2014).boat("ruff", "plover-20", 2018);
  }

  public Yard boat(String id, String model, int built) {
    files.write(
        "boats/" + id + "/boat.yaml",
        "name: %s\nmodel: %s\nhull: 7\nbuilt: %d\n".formatted(id, model, built));
    return this;
  }

  /** The same model of boat under another name, dear to hand over. */
  public Yard dearModel(String id) {
    files.write(
        "articles/models/" + id + ".md",
        """
        ---
        title: Dear to hand over
        built: 2010/2020
        drawing: {profile: ../pictures/side.svg, deck: ../pictures/top.svg}
        zones: [{id: cabin, title: Cabin, profile: "0,0 10,0 10,10"}]
        equipment: []
        yard-minutes: 900
        ---
        """);
    return this;
  }

  public Yard mend(String id, String skill, int minutes, String access) {
    files.write(
        "articles/procedures/" + id + ".md",
        """
        ---
        title: Mend by %s
        system: hull
        work: mend
        skill: %s
        minutes: %d
        access: [%s]
        ---
        1. Do it.
        """
            .formatted(id, skill, minutes, access));
    return this;
  }

  /** The symptom, with these causes and checks in YAML. */
  public Yard symptom(String causesAndChecks) {
    files.write(
        "articles/symptoms/odd.md",
        "---\ntitle: Odd\nzones: [cabin]\n" + causesAndChecks + "---\n");
    return this;
  }

  public PageReview review() {
    Workspace workspace = workspace();
    return PageReview.of(workspace.library().symptom("odd").orElseThrow(), workspace, TODAY);
  }

  public Fault onKnot() {
    Workspace workspace = workspace();
    return Fault.of(
        workspace.library().symptom("odd").orElseThrow(),
        new Fitting(workspace.boat("knot").orElseThrow(), TODAY),
        workspace.library(),
        workspace.cases());
  }

  private Workspace workspace() {
    try {
      return new WorkspaceReader(files.folders()).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
