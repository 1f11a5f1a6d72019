package limberboard.desktop.drills;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongSupplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.library.file.WorkspaceFolders;

/**
 * What the Drills place touches outside the window.
 *
 * @param folders the workspace
 * @param drills makes, plays and marks, off the event thread
 * @param writing reads and writes files, off the event thread
 * @param guard is told of work that must not run on the event thread
 * @param sources the ways by which drills come in
 * @param askFile asks for a file to write, suggesting a name
 * @param chance gives a seed each time, 0 or more
 */
public record DrillOutside(
    WorkspaceFolders folders,
    Background drills,
    Background writing,
    Guard guard,
    DrillSources sources,
    Function<String, Optional<Path>> askFile,
    LongSupplier chance) {}
