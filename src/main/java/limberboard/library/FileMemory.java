package limberboard.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Remembers what came of reading each file for as long as its size and time stay the same. For one
 * thread at a time.
 *
 * @param <T> what comes of reading a file
 */
public final class FileMemory<T> {
  private final Map<Path, Remembered<T>> files = new HashMap<>();

  private record Remembered<T>(long size, long time, T value) {}

  /** The value of a file, read anew only if the file has changed since. */
  public T of(Path file, Function<Path, T> read) {
    long size = -1;
    long time = -1;
    try {
      BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
      size = now.size();
      time = now.lastModifiedTime().toMillis();
    } catch (IOException e) {
      // the reading function meets the same trouble and reports it; nothing is remembered
      return read.apply(file);
    }
    Remembered<T> remembered = files.get(file);
    if (remembered == null || remembered.size != size || remembered.time != time) {
      remembered = new Remembered<>(size, time, read.apply(file));
      files.put(file, remembered);
    }
    return remembered.value;
  }

  /** Forgets files that are no longer there. */
  public void keepOnly(Set<Path> there) {
    files.keySet().retainAll(there);
  }
}
