package limberboard.boat;

import java.io.IOException;
import limberboard.library.WorkspaceFolders;

/** Reads a workspace again and again; only what changed is parsed anew. */
public final class WorkspaceReader {
  private final WorkspaceFolders folders;

  /** A reader of this workspace. */
  public WorkspaceReader(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * Reads the workspace.
   *
   * @throws IOException when its articles folder cannot be listed
   */
  public Workspace read() throws IOException {
    throw new IOException("not yet: " + folders);
  }
}
