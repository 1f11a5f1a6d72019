package limberboard;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import limberboard.library.file.FailureLog;

/**
 * Takes what libraries print for themselves, warnings with stack traces among it, away from the
 * person's terminal and into the file of failures. What the program says goes another way.
 */
final class Noise {
  private static final int MOST_BYTES = 64 * 1024;

  private Noise() {}

  /** From now on nothing but the program itself prints. */
  static void keepIn(FailureLog log) {
    PrintStream kept = new PrintStream(new Kept(log), true, StandardCharsets.UTF_8);
    System.setOut(kept);
    System.setErr(kept);
  }

  /** Writes each line to the log, up to a size that no person would read beyond. */
  private static final class Kept extends OutputStream {
    private final FailureLog log;
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int written;

    Kept(FailureLog log) {
      this.log = log;
    }

    @Override
    public synchronized void write(int b) {
      if (b == '\n') {
        log.write("printed by a library: " + line.toString(StandardCharsets.UTF_8));
        line.reset();
      } else if (written < MOST_BYTES) {
        line.write(b);
        written++;
      }
    }
  }
}
