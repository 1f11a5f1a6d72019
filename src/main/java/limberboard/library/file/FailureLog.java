package limberboard.library.file;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The file with the details of failures that nobody expected, for whoever mends the program. It
 * lies in a person's own {@link UserFolders#state() state folder} as {@code failures.txt}; when it
 * has grown to {@link #LARGEST} bytes it becomes {@code failures-before.txt} and a new one is
 * begun. Writing never throws. Any thread.
 */
public final class FailureLog {
  /** The bytes after which a new file is begun. */
  public static final int LARGEST = 256 * 1024;

  private static final int LONGEST_ENTRY = 32 * 1024;
  private final Optional<Path> folder;
  private final Clock clock;

  private FailureLog(Optional<Path> folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /**
   * Failures written down in a folder.
   *
   * @param folder made when the first failure is written
   * @param clock tells when it happened
   */
  public static FailureLog in(Path folder, Clock clock) {
    return new FailureLog(Optional.of(folder), clock);
  }

  /** Failures that are not written down. */
  public static FailureLog nowhere() {
    return new FailureLog(Optional.empty(), Clock.systemUTC());
  }

  /**
   * Writes the details of a failure.
   *
   * @param doing what was being done
   * @param failure what happened
   * @return the file they were written to; empty when they could not be written
   */
  public Optional<Path> write(String doing, Throwable failure) {
    try {
      StringWriter details = new StringWriter();
      failure.printStackTrace(new PrintWriter(details, true));
      return write(doing + System.lineSeparator() + details);
    } catch (RuntimeException | Error e) {
      return Optional.empty();
    }
  }

  /**
   * Writes a remark, such as what a library of the program would have printed.
   *
   * @return the file it was written to; empty when it could not be written
   */
  public synchronized Optional<Path> write(String remark) {
    try {
      return folder.isEmpty() ? Optional.empty() : Optional.of(append(folder.get(), remark));
    } catch (IOException | RuntimeException | Error e) {
      return Optional.empty();
    }
  }

  private Path append(Path into, String remark) throws IOException {
    Files.createDirectories(into);
    Path file = into.resolve("failures.txt");
    if (Files.isRegularFile(file) && Files.size(file) >= LARGEST) {
      Files.move(file, into.resolve("failures-before.txt"), StandardCopyOption.REPLACE_EXISTING);
    }
    String cut = remark.length() > LONGEST_ENTRY ? remark.substring(0, LONGEST_ENTRY) : remark;
    String entry =
        clock.instant().truncatedTo(ChronoUnit.SECONDS)
            + " "
            + cut.stripTrailing()
            + System.lineSeparator();
    Files.writeString(
        file, entry, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    return file;
  }
}
