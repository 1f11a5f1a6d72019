package limberboard.cli;

import java.io.Serial;
import java.util.Collection;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.PlainTrouble;

/** A command cannot go on; the message tells the person why and what would be right. */
final class Failure extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  private final int exitCode;

  Failure(int exitCode, String message) {
    super(message);
    this.exitCode = exitCode;
  }

  /** Nothing has this id; says which one is nearest, or else what would be right. */
  static Failure unknown(String kind, String id, Collection<String> known, String otherwise) {
    return new Failure(
        ExitCode.NOT_FOUND,
        "there is no " + kind + " \"" + id + "\"; " + Nearest.advice(id, known, otherwise));
  }

  /** A trouble with files, the history or an archive ends the command; says the way on. */
  static Failure of(PlainTrouble trouble) {
    return new Failure(ExitCode.IO, trouble.wrong() + "; " + trouble.right());
  }

  int exitCode() {
    return exitCode;
  }
}
