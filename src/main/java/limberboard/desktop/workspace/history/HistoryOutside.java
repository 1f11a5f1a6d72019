package limberboard.desktop.workspace.history;

import java.time.ZoneId;
import java.util.concurrent.Executor;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.library.file.WorkspaceFolders;

/**
 * What history and sharing touch.
 *
 * @param folders the workspace
 * @param session tells the pages as they are
 * @param background reads and writes versions, off the event thread
 * @param guard is told of work that must not run on the event thread
 * @param notices messages to the person in front of the window
 * @param who says who records
 * @param zone where days end
 * @param event the event thread, for work that tells how far it is
 * @param changed is called on the event thread when files of the workspace were changed
 */
public record HistoryOutside(
    WorkspaceFolders folders,
    Session session,
    Background background,
    Guard guard,
    Notices notices,
    WhoRecords who,
    ZoneId zone,
    Executor event,
    Runnable changed) {}
