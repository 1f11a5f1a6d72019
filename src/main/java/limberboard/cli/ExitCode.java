package limberboard.cli;

/** Exit codes, after the BSD convention of sysexits where one fits. */
public final class ExitCode {
  /** It worked. */
  public static final int OK = 0;

  /** It worked, and found errors in the workspace's files. */
  public static final int PROBLEMS = 1;

  /** The command line was not understood. */
  public static final int USAGE = 64;

  /** What was asked for is not there: a page, boat, symptom, check or answer. */
  public static final int NOT_FOUND = 65;

  /** There is no workspace here, or it cannot be read. */
  public static final int NO_WORKSPACE = 66;

  /** Something went wrong that nobody expected; the details are written down. */
  public static final int UNEXPECTED = 70;

  /** Something could not be written or read, or what was printed did not arrive. */
  public static final int IO = 74;

  private ExitCode() {}
}
