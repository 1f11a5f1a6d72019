package limberboard.library;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes files so that a killed process or a full disk leaves either the old file or the new one:
 * to a temporary file beside it, synced, then renamed.
 */
public final class SafeFiles {
  private SafeFiles() {}

  /**
   * Writes a text as UTF-8, making folders where needed.
   *
   * @throws IOException when it cannot be written; the old file is then still there, whole
   */
  public static void write(Path file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes, making folders where needed.
   *
   * @throws IOException when they cannot be written; the old file is then still there, whole
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path target = file.toAbsolutePath();
    Files.createDirectories(target.getParent());
    Path temporary =
        Files.createTempFile(target.getParent(), "." + target.getFileName() + "-", ".tmp");
    try {
      try (FileChannel channel =
          FileChannel.open(
              temporary, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
          channel.write(buffer);
        }
        channel.force(true);
      }
      replace(temporary, target);
      syncFolder(target.getParent());
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  private static void replace(Path temporary, Path target) throws IOException {
    try {
      Files.move(
          temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Makes the renaming itself last; some systems do not let a folder be opened, and need not. */
  private static void syncFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // the file's own content is synced already
    }
  }
}
