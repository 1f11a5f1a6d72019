package limberboard.library;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Says in plain words why a file could not be written and what to do. */
public final class WriteTrouble {
  private WriteTrouble() {}

  /**
   * The trouble as a problem of the file.
   *
   * @param name what the problem calls the file
   * @param trouble what the system said
   */
  public static Problem problem(String name, IOException trouble) {
    if (trouble instanceof FileBytes.Refused refused) {
      return Problem.error(name, 0, "", refused.wrong(), refused.right());
    }
    if (trouble instanceof AccessDeniedException) {
      return Problem.error(
          name,
          0,
          "",
          "may not be written by you",
          "change the permissions of the file and its folder, or ask whoever keeps them;"
              + " nothing was changed");
    }
    if (trouble instanceof NoSuchFileException) {
      return Problem.error(
          name,
          0,
          "",
          "cannot be written, because its folder is not there",
          "look whether the folder was moved or its disk is not connected; nothing was changed");
    }
    return Problem.error(
        name,
        0,
        "",
        "could not be written: " + reason(trouble),
        "mend that and try again; nothing was changed");
  }

  private static String reason(IOException trouble) {
    if (trouble instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    return trouble.getMessage() == null ? "the system gives no reason" : trouble.getMessage();
  }
}
