package limberboard.desktop;

import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.prefs.Preferences;
import limberboard.boat.BoatWriter;
import limberboard.boat.LogBook;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Settings;
import limberboard.desktop.boats.BoatStore;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.Outlets;
import limberboard.desktop.read.SystemOpening;
import limberboard.desktop.read.SystemPrinting;
import limberboard.desktop.trace.TraceFiles;
import limberboard.desktop.upkeep.LogStore;
import limberboard.desktop.window.FileQuestion;
import limberboard.library.LastNet;
import limberboard.library.UserFolders;
import limberboard.library.WorkspaceFolders;
import limberboard.search.SearchWords;
import limberboard.workings.sums.SumUseCheck;
import limberboard.workings.sums.Sums;

/**
 * Starts the window, in this order: system properties, preferences, executors; then on the event
 * thread fonts, theme, frame; then, off it, the workspace and the index.
 */
final class DesktopStart {
  /** Held on to, because a logger that nobody holds forgets its level. */
  private static final Logger PREFERENCES_LOG = Logger.getLogger("java.util.prefs");

  private static final int TYPING_PAUSE = 120;
  private static final Duration QUIET = Duration.ofMillis(400);
  private final WorkspaceFolders folders;
  private final LastNet net;

  DesktopStart(WorkspaceFolders folders, LastNet net) {
    this.folders = folders;
    this.net = net;
  }

  void start() {
    systemProperties();
    Memory memory = new Memory(Preferences.userRoot().node("limberboard"));
    Workers workers = new Workers();
    WorkspaceReader reader =
        new WorkspaceReader(folders, List.of(new SumUseCheck(Sums.ofTheTrade())));
    WatchedReader watched =
        new WatchedReader(
            folders, () -> reader.read().with(SearchWords.read(folders).problems()), QUIET);
    Outside outside = outside(memory, workers, watched);
    EventQueue.invokeLater(() -> open(outside, workers, watched));
  }

  private static void systemProperties() {
    System.setProperty("apple.laf.useScreenMenuBar", "true");
    System.setProperty("apple.awt.application.name", "Limberboard");
    System.setProperty("xr.util-logging.loggingEnabled", "false");
    PREFERENCES_LOG.setLevel(Level.SEVERE);
  }

  private Outside outside(Memory memory, Workers workers, Outside.Reader reader) {
    return new Outside(
        folders,
        reader,
        new OpenIndex(folders)::update,
        BoatStore.of(new BoatWriter(folders)),
        LogStore.of(new LogBook(folders)),
        new TraceFiles(UserFolders.here(), folders),
        Guard.NONE,
        Clock.systemDefaultZone(),
        memory,
        new Outside.Threads(
            workers.library(),
            workers.search(),
            workers.pages(),
            workers.trees(),
            EventQueue::invokeLater),
        new TypingPause(TYPING_PAUSE),
        new Outlets(new FileQuestion(memory)::ask, new SystemPrinting(), new SystemOpening()),
        text ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(text), null),
        Copied::toClipboard);
  }

  private void open(Outside outside, Workers workers, WatchedReader watched) {
    Theme.installFonts();
    Settings settings = new Settings(outside.memory());
    Theme.apply(settings.theme(), settings.textPercent());
    Desk desk = new Desk(outside, settings, new Notices(net));
    showFailures(desk);
    desk.window().onClosed(() -> close(workers));
    desk.window().show();
    watched.onChange(
        () -> EventQueue.invokeLater(() -> desk.loader().load()),
        failure ->
            EventQueue.invokeLater(
                () -> desk.notices().failure("Watching the library's files", failure)));
    desk.loader().load();
  }

  /** A failure that nobody expected is shown too, and written down for whoever mends it. */
  private static void showFailures(Desk desk) {
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, failure) ->
            EventQueue.invokeLater(
                () -> desk.notices().failure("Something in the window", failure)));
  }

  /** Waits off the event thread for what is still being written. */
  private static void close(Workers workers) {
    new Thread(
            () -> {
              workers.close();
              System.exit(0);
            },
            "limberboard-close")
        .start();
  }
}
