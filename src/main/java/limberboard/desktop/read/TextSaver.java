package limberboard.desktop.read;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.library.SafeFiles;

/** Saves tables as CSV, for other programs. For the event thread only. */
public final class TextSaver {
  private final Background background;
  private final Notices notices;
  private final Function<String, Optional<Path>> ask;

  /**
   * A saver.
   *
   * @param background writes the file
   * @param notices is told where the file went
   * @param ask asks where to, suggesting a file name; empty means not at all
   */
  public TextSaver(Background background, Notices notices, Function<String, Optional<Path>> ask) {
    this.background = background;
    this.notices = notices;
    this.ask = ask;
  }

  /**
   * Asks where to and saves a table.
   *
   * @param name a file name without ending
   * @param csv makes the table, off the event thread
   */
  public void save(String name, Supplier<String> csv) {
    ask.apply(name + ".csv").ifPresent(file -> write(csv, file));
  }

  private void write(Supplier<String> csv, Path file) {
    background.run(
        "Saving the CSV",
        () -> {
          SafeFiles.write(file, csv.get().getBytes(StandardCharsets.UTF_8));
          return file;
        },
        saved -> notices.tell("Saved as " + saved + "."));
  }
}
