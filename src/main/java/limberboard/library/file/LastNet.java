package limberboard.library.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Catches what nobody expected: a failure becomes one line that says what failed, with which file
 * where that is known, what to do, and where the details are. Never throws. Any thread.
 */
public final class LastNet {
  private final FailureLog details;

  /** A net that writes the details here. */
  public LastNet(FailureLog details) {
    this.details = details;
  }

  /**
   * Writes the details down and says the rest.
   *
   * @param doing what was being done: {@code find}, {@code Reading the library}
   * @param failure what happened
   * @return one line
   */
  public String line(String doing, Throwable failure) {
    try {
      Optional<Path> written = details.write(doing, failure);
      String what =
          failure instanceof VirtualMachineError
              ? unexpected(failure, written)
              : FileTrouble.behind(failure)
                  .map(LastNet::file)
                  .orElseGet(() -> unexpected(failure, written));
      return Controls.visible(doing + " did not work: " + what);
    } catch (RuntimeException | Error e) {
      return doing + " did not work, and there was no memory left to say what; start again";
    }
  }

  private static String unexpected(Throwable failure, Optional<Path> written) {
    String where =
        written
            .map(file -> "the details are in " + file)
            .orElse("the details could not be written down");
    return what(failure) + "; " + where;
  }

  private static String what(Throwable failure) {
    if (failure instanceof OutOfMemoryError) {
      return "the memory was not enough. Look for a page, log or picture that is very large, or set"
          + " JAVA_TOOL_OPTIONS=-Xmx4g";
    }
    if (failure instanceof StackOverflowError) {
      return "something is nested too deeply. Take out what was changed last, or run validate,"
          + " which looks at each file by itself";
    }
    return "a mistake of the program's own ("
        + kind(failure)
        + "). Try again; if it stays, take out what was changed last and pass the details on to"
        + " whoever looks after the program";
  }

  private static String file(IOException trouble) {
    return FileTrouble.file(trouble)
        .map(
            file ->
                file
                    + ": "
                    + FileTrouble.reason(trouble)
                    + ". Check that the file and its folder are there, that you may write there,"
                    + " and that the disk has room")
        .orElseGet(() -> FileTrouble.reason(trouble));
  }

  private static String kind(Throwable failure) {
    StackTraceElement[] at = failure.getStackTrace();
    String kind = failure.getClass().getSimpleName();
    return at.length == 0
        ? kind
        : kind + " in " + at[0].getFileName() + " " + at[0].getLineNumber();
  }
}
