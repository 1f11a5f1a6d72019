package limberboard.desktop.read;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;

/**
 * The ways out of the program for what is read.
 *
 * @param askFile asks for a file to write, suggesting a name; empty means that nothing is written
 * @param printing the printers
 * @param opening opens files in other programs
 */
public record Outlets(
    Function<String, Optional<Path>> askFile, Printing printing, Opening opening) {}
