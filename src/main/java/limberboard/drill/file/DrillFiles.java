package limberboard.drill.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.file.TextFile;
import limberboard.library.header.HeaderBinder;
import limberboard.library.problem.Problem;

/** Reads and writes drills, one a file: orders and results. Stateless. */
public final class DrillFiles {
  /** What a drill's file ends in. */
  public static final String ENDING = ".yaml";

  private final HeaderBinder binder = new HeaderBinder();

  /** Makes it. */
  public DrillFiles() {}

  /**
   * What came of reading.
   *
   * @param drill the drill, if it can be used
   * @param problems what is wrong
   */
  public record Read(Optional<KeptDrill> drill, List<Problem> problems) {
    /** Copies the list. */
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file. */
  public Read read(Path file) {
    TextFile.Result text = TextFile.read(file, file.toString());
    return text.problems().isEmpty()
        ? read(file.toString(), text.text())
        : new Read(Optional.empty(), text.problems());
  }

  /**
   * Reads the text of a file.
   *
   * @param name what problems call it
   */
  public Read read(String name, String text) {
    HeaderBinder.Bound<DrillEntry> bound = binder.read(name, text, DrillEntry.class);
    List<Problem> problems = new ArrayList<>(bound.problems());
    if (bound.value().isEmpty()) {
      return new Read(Optional.empty(), problems);
    }
    try {
      return new Read(Optional.of(bound.value().get().kept()), problems);
    } catch (IllegalArgumentException e) {
      String key = e.getMessage().split(":", 2)[0];
      String wrong = e.getMessage().substring(key.length() + 1).strip();
      problems.add(
          Problem.error(name, bound.line(key), key, wrong, "put it right; nothing was marked"));
      return new Read(Optional.empty(), problems);
    }
  }

  /** The text of a drill's file. */
  public String text(KeptDrill drill) {
    return WrittenYaml.of(DrillEntry.of(drill).keys());
  }
}
