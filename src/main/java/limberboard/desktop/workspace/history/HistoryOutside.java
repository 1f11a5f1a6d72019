package limberboard.desktop.workspace.history;

import java.time.ZoneId;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.library.file.WorkspaceFolders;

/**
 * What history and sharing touch.
 *
 * @param recorded the workspace whose versions these are; asked off the event thread, as a rule
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
    Supplier<WorkspaceFolders> recorded,
    Session session,
    Background background,
    Guard guard,
    Notices notices,
    WhoRecords who,
    ZoneId zone,
    Executor event,
    Runnable changed) {
  /** The workspace whose versions these are. */
  public WorkspaceFolders folders() {
    return recorded.get();
  }
}
