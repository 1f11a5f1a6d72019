package limberboard.sharing;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.TimeUnit;

/** A process that has ended, or is ended, when it is asked how it ended. */
final class EndedProcess extends Process {
  private static final int SECONDS = 5;

  private final Process process;

  EndedProcess(Process process) {
    this.process = process;
  }

  @Override
  public OutputStream getOutputStream() {
    return process.getOutputStream();
  }

  @Override
  public InputStream getInputStream() {
    return process.getInputStream();
  }

  @Override
  public InputStream getErrorStream() {
    return process.getErrorStream();
  }

  @Override
  public int waitFor() throws InterruptedException {
    return process.waitFor();
  }

  @Override
  public int exitValue() {
    try {
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return process.exitValue();
  }

  @Override
  public void destroy() {
    process.destroy();
  }
}
