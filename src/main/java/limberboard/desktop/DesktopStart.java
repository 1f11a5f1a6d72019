package limberboard.desktop;

import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import limberboard.boat.BoatWriter;
import limberboard.boat.LogWriter;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.KeptValues;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.PersonAndWorkspace;
import limberboard.desktop.base.Recent;
import limberboard.desktop.base.Settings;
import limberboard.desktop.boats.BoatStore;
import limberboard.desktop.drills.DrillSources;
import limberboard.desktop.letters.LetterNotes;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.ClipboardText;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.Outlets;
import limberboard.desktop.read.SystemOpening;
import limberboard.desktop.read.SystemPrinting;
import limberboard.desktop.trace.TraceFiles;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.desktop.window.CourseQuestion;
import limberboard.desktop.window.FileQuestion;
import limberboard.desktop.window.OpenQuestion;
import limberboard.desktop.write.state.PageRecord;
import limberboard.desktop.write.state.TextStore;
import limberboard.letters.inbox.LetterFolder;
import limberboard.library.file.LastNet;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.writing.save.KeptTexts;

/**
 * Starts the window, in this order: system properties, preferences, executors; then on the event
 * thread fonts, theme, frame; then, off it, the workspace and the index.
 */
final class DesktopStart {
  private static final int TYPING_PAUSE = 120;
  private static final int TABLE_PAUSE = 250;
  private static final int KEEPING_PAUSE = 800;
  private static final Duration QUIET = Duration.ofMillis(400);
  private final WorkspaceFolders folders;
  private final LastNet net;

  DesktopStart(WorkspaceFolders folders, LastNet net) {
    this.folders = folders;
    this.net = net;
  }

  void start() {
    systemProperties();
    Workers workers = new Workers();
    OwnFiles own =
        new OwnFiles(
            UserFolders.here(), workers.library(), e -> net.line("Keeping the settings", e));
    KeptValues person = own.person();
    Memory memory = new Memory(new PersonAndWorkspace(person, own.workspace(folders.root())));
    Recent recent = new Recent(person);
    WindowServices.Reader reader = WindowServices.Reader.of(folders, Clock.systemDefaultZone());
    WatchedReader watched = new WatchedReader(folders, reader, QUIET);
    WindowServices outside = outside(memory, workers, watched);
    EventQueue.invokeLater(() -> open(outside, workers, watched, recent));
  }

  private static void systemProperties() {
    System.setProperty("apple.laf.useScreenMenuBar", "true");
    System.setProperty("apple.awt.application.name", "Limberboard");
    System.setProperty("xr.util-logging.loggingEnabled", "false");
  }

  private WindowServices outside(Memory memory, Workers workers, WindowServices.Reader reader) {
    CourseQuestion courses = new CourseQuestion(memory);
    return new WindowServices(
        folders,
        () -> folders,
        folders,
        reader,
        new OpenIndex(folders)::update,
        BoatStore.of(new BoatWriter(folders)),
        LogStore.of(new LogWriter(folders)),
        new TraceFiles(UserFolders.here(), folders),
        Guard.NONE,
        Clock.systemDefaultZone(),
        memory,
        new WindowServices.Threads(
            workers.library(),
            workers.search(),
            workers.pages(),
            workers.trees(),
            workers.letters(),
            workers.drills(),
            workers.versions(),
            workers.findings(),
            workers.written(),
            EventQueue::invokeLater),
        new TypingPause(TYPING_PAUSE),
        new Outlets(new FileQuestion(memory)::ask, new SystemPrinting(), new SystemOpening()),
        text ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(text), null),
        Copied::toClipboard,
        new WindowServices.Arriving(
            OpenQuestion.letters(memory)::ask,
            ClipboardText::now,
            LetterNotes.of(new LetterFolder(folders))),
        new DrillSources(courses::course, courses::results),
        new WindowServices.Writing(
            new TypingPause(TYPING_PAUSE),
            new TypingPause(TABLE_PAUSE),
            new TypingPause(KEEPING_PAUSE),
            TextStore.of(new KeptTexts(UserFolders.here(), folders), folders),
            PageRecord.of(folders),
            OpenQuestion.pictures(memory)::ask));
  }

  private void open(WindowServices outside, Workers workers, WatchedReader watched, Recent recent) {
    recent.opened(folders.root());
    Theme.installFonts();
    Settings settings = new Settings(outside.memory());
    Theme.apply(settings.theme(), settings.textPercent());
    WindowAssembly desk = new WindowAssembly(outside, settings, new Notices(net));
    showFailures(desk);
    desk.window().onClosed(() -> close(workers, watched, Optional.empty()));
    desk.opener(
        new WorkspaceOpener(
            folders,
            desk.window(),
            recent,
            other -> desk.window().close(() -> close(workers, watched, Optional.of(other)))));
    desk.window().show();
    watched.onChange(
        () -> EventQueue.invokeLater(() -> desk.loader().load()),
        failure ->
            EventQueue.invokeLater(
                () -> desk.notices().failure("Watching the library's files", failure)));
    new CutShort(folders).finish(desk.writing(), desk.notices());
    desk.loader().load();
  }

  /** A failure that nobody expected is shown too, and written down for whoever mends it. */
  private static void showFailures(WindowAssembly desk) {
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, failure) ->
            EventQueue.invokeLater(
                () -> desk.notices().failure("Something in the window", failure)));
  }

  /**
   * Waits off the event thread for what is still being written; then opens the workspace that was
   * asked for, or ends the program.
   */
  private void close(Workers workers, WatchedReader watched, Optional<WorkspaceFolders> following) {
    new Thread(
            () -> {
              stop(watched);
              workers.close();
              following.ifPresentOrElse(
                  other -> new DesktopStart(other, net).start(), () -> System.exit(0));
            },
            "limberboard-close")
        .start();
  }

  private void stop(WatchedReader watched) {
    try {
      watched.close();
    } catch (IOException e) {
      net.line("Ending the watch on the files", e);
    }
  }
}
