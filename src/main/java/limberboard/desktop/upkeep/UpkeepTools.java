package limberboard.desktop.upkeep;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Notices;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.read.PdfSaver;
import limberboard.desktop.read.SheetReader;

/**
 * What aspects of upkeep are made with.
 *
 * @param upkeep boat, day and what is due
 * @param log writes the boat's log
 * @param background works things out and renders them, off the event thread
 * @param saver saves sheets as PDF
 * @param sheets makes readers of sheets
 * @param askFile asks for a file to write, suggesting a name
 * @param notices messages to the person in front of the window
 * @param navigator the ways to other places
 * @param dividers remembers dividers
 */
public record UpkeepTools(
    UpkeepModel upkeep,
    LogModel log,
    Background background,
    PdfSaver saver,
    Supplier<SheetReader> sheets,
    Function<String, Optional<Path>> askFile,
    Notices notices,
    Navigator navigator,
    Divider.Memory dividers) {}
