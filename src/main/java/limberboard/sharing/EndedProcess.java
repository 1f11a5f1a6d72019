package limberboard.sharing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.TimeUnit;

/**
 * A process that has ended, or is ended, when it is asked how it ended, and whose errors nobody
 * waits for.
 */
final class EndedProcess extends Process {
  private static final int SECONDS = 5;

  private final Process process;
  private final ErrorsAside errors;
  private final InputStream output;

  EndedProcess(Process process) throws IOException {
    this.process = process;
    this.errors = new ErrorsAside(process.getErrorStream());
    this.output = errors.after(process.getInputStream());
  }

  @Override
  public OutputStream getOutputStream() {
    return process.getOutputStream();
  }

  @Override
  public InputStream getInputStream() {
    return output;
  }

  @Override
  public InputStream getErrorStream() {
    return errors.stream();
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
