package limberboard.desktop.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import limberboard.library.file.SafeFiles;

/**
 * Values kept in a plain file, one {@code key = value} a line, by key. A file that cannot be read
 * counts as not there, and so does a line that is none. What was changed is written off the event
 * thread, into what the file says then, so that two windows do not take each other's values away.
 */
public final class KeptValuesFile implements KeptValues {
  private static final long MOST_BYTES = 1_000_000;
  private final Path file;
  private final Executor writer;
  private final Consumer<IOException> trouble;
  private final Map<String, String> values;
  private final Map<String, String> changed = new TreeMap<>();

  /**
   * The values in a file as it is now.
   *
   * @param file the file; made when something is kept
   * @param writer writes, one after another
   * @param trouble is told, on the writer's thread, when the file cannot be written
   */
  public KeptValuesFile(Path file, Executor writer, Consumer<IOException> trouble) {
    this.file = file;
    this.writer = writer;
    this.trouble = trouble;
    this.values = read(file);
  }

  @Override
  public String get(String key) {
    return values.getOrDefault(key, "");
  }

  @Override
  public void put(String key, String value) {
    if (value.equals(values.put(key, value))) {
      return;
    }
    boolean first;
    synchronized (changed) {
      first = changed.isEmpty();
      changed.put(key, value);
    }
    if (first) {
      try {
        writer.execute(this::write);
      } catch (RejectedExecutionException e) {
        write();
      }
    }
  }

  private void write() {
    Map<String, String> all = read(file);
    synchronized (changed) {
      all.putAll(changed);
      changed.clear();
    }
    StringBuilder text = new StringBuilder();
    all.forEach((key, value) -> text.append(key).append(" = ").append(oneLine(value)).append('\n'));
    try {
      SafeFiles.write(file, text.toString());
    } catch (IOException e) {
      trouble.accept(e);
    }
  }

  private static String oneLine(String value) {
    return value.replaceAll("\\p{Cntrl}", " ").strip();
  }

  private static Map<String, String> read(Path file) {
    Map<String, String> read = new TreeMap<>();
    try {
      if (Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES) {
        for (String line : Files.readAllLines(file)) {
          int equals = line.indexOf('=');
          if (equals > 0) {
            read.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
          }
        }
      }
    } catch (IOException e) {
      read.clear();
    }
    return read;
  }
}
