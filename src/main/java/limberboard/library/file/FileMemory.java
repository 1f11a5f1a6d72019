package limberboard.library.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Remembers what came of reading each file for as long as its size and time stay the same. A file
 * that had changed within two seconds before it was read may change again without either of them
 * telling, so it is read once more the next time. For one thread at a time.
 *
 * @param <T> what comes of reading a file
 */
public final class FileMemory<T> {
  private final Map<Path, Remembered<T>> files = new HashMap<>();
  private final Set<Path> asked = new HashSet<>();
  private final InstantSource clock;

  private record Remembered<T>(long size, FileTime time, boolean trusted, T value) {}

  /** A memory of nothing. */
  public FileMemory() {
    this(InstantSource.system());
  }

  FileMemory(InstantSource clock) {
    this.clock = clock;
  }

  /** The value of a file, read anew only if the file has changed since, or may have. */
  public T of(Path file, Function<Path, T> read) {
    asked.add(file);
    BasicFileAttributes now;
    try {
      now = Files.readAttributes(file, BasicFileAttributes.class);
    } catch (IOException e) {
      // the reading function meets the same trouble and reports it; nothing is remembered
      files.remove(file);
      return read.apply(file);
    }
    Remembered<T> known = files.get(file);
    if (known != null
        && known.trusted
        && known.size == now.size()
        && known.time.equals(now.lastModifiedTime())) {
      return known.value;
    }
    boolean trusted = !FileAge.isYoung(now.lastModifiedTime(), clock.instant());
    T value = read.apply(file);
    T kept = known != null && known.value.equals(value) ? known.value : value;
    files.put(file, new Remembered<>(now.size(), now.lastModifiedTime(), trusted, kept));
    return kept;
  }

  /** Forgets the files that nobody has asked for since the last call. */
  public void forgetUnasked() {
    files.keySet().retainAll(asked);
    asked.clear();
  }

  /** How many files are remembered. */
  int size() {
    return files.size();
  }
}
