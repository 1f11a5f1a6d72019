package limberboard.desktop.upkeep.state;

import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Notices;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.read.Papers;
import limberboard.desktop.read.SheetReader;
import limberboard.desktop.upkeep.entry.LogModel;

/**
 * What aspects of upkeep are made with.
 *
 * @param upkeep boat, day and what is due
 * @param log writes the boat's log
 * @param background works things out and renders them, off the event thread
 * @param papers prints and saves sheets
 * @param sheets makes readers of sheets
 * @param notices messages to the person in front of the window
 * @param navigator the ways to other places
 * @param dividers remembers dividers
 */
public record UpkeepTools(
    UpkeepModel upkeep,
    LogModel log,
    Background background,
    Papers papers,
    Supplier<SheetReader> sheets,
    Notices notices,
    Navigator navigator,
    Divider.Memory dividers) {}
