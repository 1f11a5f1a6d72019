package limberboard.sharing;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * What a process says on its error stream, read aside so that nobody waits for it for ever.
 *
 * <p>A read of a pipe cannot be interrupted, and the pipe stays open as long as any child of the
 * process keeps it: {@code ssh} that shares its connection leaves such a child behind. So a thread
 * of its own reads the pipe and hands on what comes; whoever reads {@link #stream} can be
 * interrupted. And a process that fails ends its output before all it said of why has been read:
 * {@link #after} holds that end back a little, until it has.
 */
final class ErrorsAside {
  private static final int SECONDS = 2;

  private final CountDownLatch read = new CountDownLatch(1);
  private final InputStream stream;

  /**
   * Reads a stream aside.
   *
   * @throws IOException when it cannot be begun
   */
  ErrorsAside(InputStream errors) throws IOException {
    PipedInputStream near = new PipedInputStream();
    PipedOutputStream far = new PipedOutputStream(near);
    stream =
        new FilterInputStream(near) {
          @Override
          public int read(byte[] into, int from, int length) throws IOException {
            int n = super.read(into, from, length);
            if (n < 0) {
              read.countDown();
            }
            return n;
          }

          @Override
          public void close() throws IOException {
            read.countDown();
            super.close();
          }
        };
    Thread thread = new Thread(() -> pass(errors, far), "errors of a remote's command");
    thread.setDaemon(true);
    thread.start();
  }

  private static void pass(InputStream errors, PipedOutputStream far) {
    try (errors;
        far) {
      byte[] some = new byte[1024];
      for (int n = errors.read(some); n >= 0; n = errors.read(some)) {
        far.write(some, 0, n);
        far.flush();
      }
    } catch (IOException e) {
      // nobody reads on, or the process has gone: what was said is said
    }
  }

  /** What is said; a read ends when its thread is interrupted. */
  InputStream stream() {
    return stream;
  }

  /** A process's output whose end waits, for seconds at most, until the errors have been read. */
  InputStream after(InputStream output) {
    return new FilterInputStream(output) {
      @Override
      public int read() throws IOException {
        return ended(super.read());
      }

      @Override
      public int read(byte[] into, int from, int length) throws IOException {
        return ended(super.read(into, from, length));
      }
    };
  }

  private int ended(int got) {
    if (got < 0) {
      try {
        read.await(SECONDS, TimeUnit.SECONDS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
    return got;
  }
}
