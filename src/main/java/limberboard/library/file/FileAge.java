package limberboard.library.file;

import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;

/** Whether a file's time can be trusted to tell its next change. */
final class FileAge {
  /** The coarsest steps in which file systems in use keep times: two seconds, on FAT. */
  private static final Duration STEP = Duration.ofSeconds(2);

  private FileAge() {}

  /** Whether a file has changed so lately that another change might leave its time as it is. */
  static boolean isYoung(FileTime changed, Instant now) {
    return changed.toInstant().isAfter(now.minus(STEP));
  }
}
