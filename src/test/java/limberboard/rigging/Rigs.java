package limberboard.rigging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;

/** Boats whose rig and ropes a test writes. */
public final class Rigs {
  static final LocalDate A_DAY = LocalDate.of(2026, 6, 1);

  private Rigs() {}

  /** The running rigging of a boat of a model with this rig and these ropes. */
  public static RunningRigging of(Path folder, String rig, String ropes) {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/models/sloop.md",
        """
        ---
        title: Sloop
        built: 2010/2020
        drawing: {profile: ../pictures/side.svg, deck: ../pictures/top.svg}
        zones: [{id: cabin, title: Cabin, profile: "0,0 10,0 10,10"}]
        equipment:
          - id: headsail
            title: Headsail
            choices:
              - {id: hanks, title: Hanks, built: 2010/2020, default: 2010/2015}
              - {id: furler, title: Furler, built: 2010/2020, default: 2016/2020}
        rig: %s
        measures: {to-clutch: 2.4 m, oil: 2 l}
        ropes:
        %s---
        """
            .formatted(rig, ropes));
    workspace.write(
        "articles/materials/halyard.md",
        "---\ntitle: Halyard\ngroup: cordage\nunit: m\n"
            + "rope: {construction: hmpe-core, diameter: 8 mm}\n---\n");
    workspace.write("boats/teal/boat.yaml", "name: Teal\nmodel: sloop\nhull: 3\nbuilt: 2014\n");
    return read(folder, "teal");
  }

  /** The running rigging of a boat of a workspace. */
  static RunningRigging read(Path folder, String boat) {
    Workspace workspace = workspace(folder);
    return RunningRigging.of(
        workspace.library(), new Fitting(workspace.boat(boat).orElseThrow(), A_DAY));
  }

  public static Workspace workspace(Path folder) {
    try {
      return new WorkspaceReader(new WorkspaceFolders(folder)).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
