package limberboard.desktop.letters;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.desktop.parts.Copied;

/**
 * The ways by which letters come into the window and leave it.
 *
 * @param askFiles asks for letters to be opened; none means that nothing is
 * @param pasted the text that another program has copied
 * @param askFile asks for a file to write, suggesting a name; empty means that nothing is written
 * @param text takes plain text for other programs
 * @param copied takes text with its structure for other programs
 */
public record LetterOutlets(
    Supplier<List<Path>> askFiles,
    Supplier<Optional<String>> pasted,
    Function<String, Optional<Path>> askFile,
    Consumer<String> text,
    Consumer<Copied> copied) {}
