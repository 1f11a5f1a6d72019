package limberboard.desktop.workspace.notes;

import java.time.Clock;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.read.Opening;
import limberboard.library.file.WorkspaceFolders;

/**
 * What quick notes touch.
 *
 * @param folders the workspace
 * @param writing reads and writes notes, off the event thread
 * @param guard is told of work that must not run on the event thread
 * @param notices messages to the person in front of the window
 * @param clock says when
 * @param screen what is on the screen at this moment
 * @param opening opens photos in other programs
 */
public record NotesOutside(
    WorkspaceFolders folders,
    Background writing,
    Guard guard,
    Notices notices,
    Clock clock,
    Supplier<NoteTies> screen,
    Opening opening) {}
