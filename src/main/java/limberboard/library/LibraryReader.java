package limberboard.library;

import java.io.IOException;

/** Reads the library again and again; only changed files are parsed anew. */
public final class LibraryReader {
  private final WorkspaceFolders folders;

  /** A reader of this workspace's library. */
  public LibraryReader(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * Reads the library.
   *
   * @throws IOException when the articles folder cannot be listed
   */
  public Library read() throws IOException {
    throw new IOException("not yet: " + folders);
  }
}
