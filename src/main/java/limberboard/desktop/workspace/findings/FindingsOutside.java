package limberboard.desktop.workspace.findings;

import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.library.file.WorkspaceFolders;

/**
 * What looking for findings touches.
 *
 * @param folders the workspace
 * @param session tells what was read
 * @param looking follows the plans, off the event thread
 * @param writing writes into the workspace, off the event thread
 * @param guard is told of work that must not run on the event thread
 * @param notices messages to the person in front of the window
 * @param memory remembers what kind of reader read a page last
 * @param changed is called on the event thread when a file was changed
 */
public record FindingsOutside(
    WorkspaceFolders folders,
    Session session,
    Background looking,
    Background writing,
    Guard guard,
    Notices notices,
    Memory memory,
    Runnable changed) {}
