package limberboard.desktop.drills;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The ways by which drills come in; each asks, and empty means that nothing is to be opened.
 *
 * @param course asks for the file of a course
 * @param results asks for the folder in which the results of a class lie
 */
public record DrillSources(Supplier<Optional<Path>> course, Supplier<Optional<Path>> results) {
  /** Nothing is ever opened. */
  public static final DrillSources NONE = new DrillSources(Optional::empty, Optional::empty);
}
