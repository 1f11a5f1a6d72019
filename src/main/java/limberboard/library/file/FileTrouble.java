package limberboard.library.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;
import limberboard.library.problem.Problem;

/** What the system says of a file, in plain words, and what to do about it. */
public final class FileTrouble {
  private static final int DEEPEST = 20;

  private FileTrouble() {}

  /** Why a file could not be read or written: {@code no space left on device}. */
  public static String reason(IOException trouble) {
    if (trouble instanceof AccessDeniedException) {
      return "you have no permission for it";
    }
    if (trouble instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (trouble instanceof FileSystemException system && system.getReason() != null) {
      return lower(system.getReason());
    }
    return trouble.getMessage() == null
        ? "the system gives no reason"
        : lower(trouble.getMessage());
  }

  /**
   * Why a file could not be written, as a problem of the file that says what to do.
   *
   * @param name what the problem calls the file
   * @param trouble what the system said
   */
  public static Problem notWritten(String name, IOException trouble) {
    if (trouble instanceof FileBytes.Refused refused) {
      return Problem.error(name, 0, "", refused.wrong(), refused.right());
    }
    return Problem.error(
        name,
        0,
        "",
        "could not be written: "
            + (trouble instanceof NoSuchFileException
                ? "its folder is not there"
                : reason(trouble)),
        remedy(trouble) + "; nothing was changed");
  }

  /** What to do about it. */
  private static String remedy(IOException trouble) {
    if (trouble instanceof AccessDeniedException) {
      return "change the permissions of the file and its folder, or ask whoever keeps them";
    }
    return trouble instanceof NoSuchFileException
        ? "look whether it was moved or its disk is not connected"
        : "mend that and try again";
  }

  private static String lower(String text) {
    boolean oneWord = text.length() < 2 || Character.isUpperCase(text.charAt(1));
    return oneWord ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  /** The trouble with a file that lies behind a failure. */
  public static Optional<IOException> behind(Throwable failure) {
    Throwable at = failure;
    for (int i = 0; at != null && i < DEEPEST; i++, at = at.getCause()) {
      if (at instanceof IOException trouble && !(trouble.getCause() instanceof IOException)) {
        return Optional.of(trouble);
      }
      if (at instanceof UncheckedIOException wrapped) {
        return Optional.of(wrapped.getCause());
      }
    }
    return Optional.empty();
  }

  /**
   * The file in question, as the system names it; empty when it names none. For a temporary file
   * the one that was to be written stands in its place.
   */
  public static Optional<String> file(IOException trouble) {
    return trouble instanceof FileSystemException system
        ? Optional.ofNullable(system.getFile()).map(SafeFiles::lasting)
        : Optional.empty();
  }
}
