package limberboard.cli;

import java.io.Serial;

/** A command cannot go on; the message tells the person why and what would be right. */
final class Failure extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  private final int exitCode;

  Failure(int exitCode, String message) {
    super(message);
    this.exitCode = exitCode;
  }

  int exitCode() {
    return exitCode;
  }
}
