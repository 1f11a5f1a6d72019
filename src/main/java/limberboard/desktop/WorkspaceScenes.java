package limberboard.desktop;

import java.time.LocalDate;
import limberboard.desktop.workspace.WorkspacePlace;
import limberboard.desktop.workspace.history.VersionLook;
import limberboard.desktop.workspace.share.ShareStage;
import limberboard.desktop.workspace.share.SharingModel;
import limberboard.sharing.merge.Choice;

/** The states of the Workspace place that pictures are made of, with an invented history. */
final class WorkspaceScenes {
  private WorkspaceScenes() {}

  private static WorkspacePlace place(WindowAssembly desk) {
    desk.go("workspace");
    return (WorkspacePlace) desk.place("workspace");
  }

  static void findings(WindowAssembly desk) {
    place(desk).look("findings");
  }

  static void notes(WindowAssembly desk) {
    place(desk).look("notes");
  }

  static void changed(WindowAssembly desk) {
    WorkspacePlace place = place(desk);
    place.history(SampleHistory.PAGE);
    place.history().look(VersionLook.CHANGED);
  }

  static void then(WindowAssembly desk) {
    WorkspacePlace place = place(desk);
    place.history(SampleHistory.PAGE);
    place.history().on(LocalDate.of(2026, 2, 1));
  }

  /** The first part is chosen, and the second looked at. */
  static void settle(WindowAssembly desk) {
    WorkspacePlace place = place(desk);
    place.look("sharing");
    SharingModel sharing = place.sharing();
    if (sharing.stage() == ShareStage.READY && sharing.came().files().isEmpty()) {
      sharing.pull();
    }
    if (sharing.stage() == ShareStage.SETTLING) {
      sharing.choose(Choice.OURS);
    }
  }

  static void came(WindowAssembly desk) {
    settle(desk);
    SharingModel sharing = place(desk).sharing();
    for (int i = 0; i < sharing.conflicts().size(); i++) {
      sharing.choose(Choice.THEIRS);
    }
    sharing.settle();
  }
}
