package limberboard.desktop;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleExtendedText;
import javax.accessibility.AccessibleText;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.RootPaneContainer;
import limberboard.boat.BoatWriter;
import limberboard.boat.LogChange;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWriter;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Settings;
import limberboard.desktop.boats.BoatStore;
import limberboard.desktop.drills.DrillSources;
import limberboard.desktop.find.SearchSource;
import limberboard.desktop.letters.LetterNotes;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.read.Outlets;
import limberboard.desktop.support.SmallPrinter;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.trace.TraceFiles;
import limberboard.desktop.trace.TraceStore;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.desktop.write.state.PageRecord;
import limberboard.desktop.write.state.TextStore;
import limberboard.letters.inbox.LetterFolder;
import limberboard.library.Library;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.writing.save.KeptTexts;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.NameMatcher;
import org.assertj.swing.core.Robot;
import org.assertj.swing.exception.WaitTimedOutError;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Assumptions;

/**
 * The real window on a copy of the small workspace, with the real threads and real events. Reading,
 * indexing, searching, writing, planning, cutting, counting and rendering are watched: each of them
 * that runs on the event thread is noted.
 */
final class SmallWindow implements AutoCloseable {
  private static final int MOST_PAUSES = 500;
  private static final int PAUSE_MILLIS = 10;
  private final WorkspaceFolders folders;
  private final Workers workers = new Workers();
  private final Awaited awaited = new Awaited();
  private final AtomicInteger arrived = new AtomicInteger();
  private final AWTEventListener letGo = this::letGo;
  private final List<String> onEventThread = Collections.synchronizedList(new ArrayList<>());
  private final AtomicReference<Optional<Path>> course = new AtomicReference<>(Optional.empty());
  private final AtomicReference<Optional<Path>> results = new AtomicReference<>(Optional.empty());
  private final SmallPrinter printer = new SmallPrinter();
  private final List<Path> opened = Collections.synchronizedList(new ArrayList<>());
  private final List<Path> opening = Collections.synchronizedList(new ArrayList<>());
  private final List<Path> pictures = Collections.synchronizedList(new ArrayList<>());
  private final AtomicReference<String> pasted = new AtomicReference<>("");
  private final AtomicReference<String> copied = new AtomicReference<>("");
  private final AtomicReference<Optional<IOException>> failure =
      new AtomicReference<>(Optional.empty());
  private final List<Throwable> failures = Collections.synchronizedList(new ArrayList<>());
  private final Robot robot;
  private final FrameFixture frame;
  private final WindowAssembly desk;

  private SmallWindow(WorkspaceFolders folders, Memory memory) throws IOException {
    this.folders = folders;
    Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> failures.add(thrown));
    this.robot = BasicRobot.robotWithNewAwtHierarchy();
    robot.settings().delayBetweenEvents(5);
    robot.settings().eventPostingDelay(10);
    Toolkit.getDefaultToolkit()
        .addAWTEventListener(letGo, AWTEvent.KEY_EVENT_MASK | AWTEvent.MOUSE_EVENT_MASK);
    Settings settings = new Settings(memory);
    this.desk =
        OnEventThread.get(
            () -> {
              Theme.installFonts();
              Theme.apply(settings.theme(), settings.textPercent());
              return new WindowAssembly(outside(memory), settings);
            });
    this.frame = new FrameFixture(robot, desk.window().frame());
  }

  private void letGo(AWTEvent event) {
    if (event.getID() == KeyEvent.KEY_RELEASED || event.getID() == MouseEvent.MOUSE_RELEASED) {
      arrived.incrementAndGet();
    }
  }

  /** Opens the window and waits until the library has been read. */
  static SmallWindow open(Path folder) throws IOException {
    return open(folder, new Memory(new Forgetful()));
  }

  /** The same with what was remembered before. */
  static SmallWindow open(Path folder, Memory memory) throws IOException {
    return open(SmallWorkspace.copyTo(folder), memory);
  }

  /** The same on a workspace that is there already. */
  static SmallWindow open(WorkspaceFolders folders, Memory memory) throws IOException {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(),
        "There is no display, so the window is not tested. Run: xvfb-run -a mvn verify");
    SmallWindow window = new SmallWindow(folders, memory);
    OnEventThread.run(
        () -> {
          window.desk.window().show();
          window.desk.loader().load();
        });
    window.until("the library is read", window.desk.session()::isRead);
    window.until("the search is ready", window.desk.search()::isReady);
    return window;
  }

  private WindowServices outside(Memory memory) {
    WindowServices.Reader reader = WindowServices.Reader.of(folders);
    OpenIndex index = new OpenIndex(folders);
    BoatWriter writer = new BoatWriter(folders);
    return new WindowServices(
        folders,
        () -> folders,
        folders,
        WindowServices.Reader.of(() -> read(reader), reader::typing),
        library -> update(index, library),
        write(BoatStore.of(writer)),
        logs(),
        traces(),
        this::watch,
        SmallWorkspace.clock(),
        memory,
        new WindowServices.Threads(
            awaited.counting(workers.library()),
            awaited.counting(workers.search()),
            awaited.counting(workers.pages()),
            awaited.counting(workers.trees()),
            awaited.counting(workers.letters()),
            awaited.counting(workers.drills()),
            awaited.counting(workers.versions()),
            awaited.counting(workers.findings()),
            awaited.counting(workers.written()),
            EventQueue::invokeLater),
        new TypingPause(30),
        new Outlets(name -> Optional.of(folders.root().resolve(name)), printer, opened::add),
        copied::set,
        reply -> copied.set(reply.plain()),
        new WindowServices.Arriving(
            () -> List.copyOf(opening),
            () -> Optional.of(pasted.get()),
            LetterNotes.of(new LetterFolder(folders))),
        new DrillSources(course::get, results::get),
        new WindowServices.Writing(
            new TypingPause(30),
            new TypingPause(30),
            new TypingPause(60),
            TextStore.of(new KeptTexts(user(), folders), folders),
            PageRecord.of(folders),
            () -> List.copyOf(pictures)));
  }

  private Workspace read(WindowServices.Reader reader) throws IOException {
    watch("reading the workspace");
    Optional<IOException> failing = failure.get();
    if (failing.isPresent()) {
      throw failing.get();
    }
    return reader.read();
  }

  private SearchSource update(OpenIndex index, Library library) throws IOException {
    watch("building the index");
    SearchSource source = index.update(library);
    return query -> {
      watch("searching");
      return source.find(query);
    };
  }

  private BoatStore write(BoatStore store) {
    return (library, base, boat) -> {
      watch("writing a boat");
      return store.save(library, base, boat);
    };
  }

  /** Kept beside the workspace, as a person's state folder is. */
  private UserFolders user() {
    Path state = folders.root().resolveSibling(folders.root().getFileName() + "-state");
    return new UserFolders(state, state, state);
  }

  private TraceStore traces() {
    return new TraceFiles(user(), folders);
  }

  private LogStore logs() {
    LogStore store = LogStore.of(new LogWriter(folders));
    return new LogStore() {
      @Override
      public LogWriter.Outcome add(String boat, List<LogEntry> entries) {
        watch("writing the log");
        return store.add(boat, entries);
      }

      @Override
      public LogWriter.Outcome replace(String boat, LogEntry old, LogEntry now) {
        watch("writing the log");
        return store.replace(boat, old, now);
      }

      @Override
      public LogWriter.Outcome remove(String boat, LogEntry entry) {
        watch("writing the log");
        return store.remove(boat, entry);
      }

      @Override
      public LogWriter.Outcome takeBack(LogChange change) {
        watch("writing the log");
        return store.takeBack(change);
      }
    };
  }

  private void watch(String what) {
    if (EventQueue.isDispatchThread()) {
      onEventThread.add(what);
    }
  }

  /** Slow work that ran on the event thread. */
  List<String> slowOnEventThread() {
    return List.copyOf(onEventThread);
  }

  /** What was thrown and caught by nobody. */
  List<Throwable> failures() {
    return List.copyOf(failures);
  }

  /** From now on reading the workspace fails. */
  void failReading(String why) {
    failure.set(Optional.of(new IOException(why)));
  }

  /** The text that was copied for other programs. */
  String copied() {
    return copied.get();
  }

  /** From now on this text is in the clipboard. */
  void clipboard(String text) {
    pasted.set(text);
  }

  /** From now on these letters are chosen whenever it is asked which are to be opened. */
  void toOpen(Path... files) {
    opening.clear();
    opening.addAll(List.of(files));
  }

  /** From now on these pictures are chosen when it is asked which are to be put in. */
  void picturesToPutIn(Path... files) {
    pictures.clear();
    pictures.addAll(List.of(files));
  }

  /** From now on this course is chosen when it is asked which is to be opened. */
  void courseToOpen(Path file) {
    course.set(Optional.of(file));
  }

  /** From now on this folder is chosen when it is asked where the results of a class lie. */
  void resultsToGather(Path at) {
    results.set(Optional.of(at));
  }

  /** The printer of this window. */
  SmallPrinter printer() {
    return printer;
  }

  /** Files that were opened in other programs. */
  List<Path> opened() {
    return List.copyOf(opened);
  }

  WorkspaceFolders folders() {
    return folders;
  }

  Robot robot() {
    return robot;
  }

  FrameFixture frame() {
    return frame;
  }

  WindowAssembly desk() {
    return desk;
  }

  /** Asks something of the window on the event thread. */
  <T> T ask(Callable<T> question) {
    try {
      return OnEventThread.get(question);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Does something on the event thread. */
  void act(Runnable action) {
    ask(
        () -> {
          action.run();
          return true;
        });
    settle();
  }

  /** Waits until something is so, asked on the event thread. */
  void until(String what, BooleanSupplier condition) {
    try {
      Pause.pause(
          new Condition(what) {
            @Override
            public boolean test() {
              return ask(condition::getAsBoolean);
            }
          },
          20_000);
    } catch (WaitTimedOutError e) {
      throw new AssertionError(e.getMessage() + "; the focus has " + focused(), e);
    }
    settle();
  }

  private static String focused() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    StringBuilder path = new StringBuilder(owner == null ? "nobody" : "");
    for (Component each = owner; each != null; each = each.getParent()) {
      path.append(each.getName()).append(' ').append(each.getBounds()).append(" in ");
    }
    return path.toString();
  }

  /**
   * Waits until what was begun is done and shown; not for ever, since some tests keep a thread busy
   * on purpose. On the event thread, where conditions are asked, there is nothing to wait for.
   */
  void settle() {
    if (EventQueue.isDispatchThread()) {
      return;
    }
    robot.waitForIdle();
    for (int i = 0; i < MOST_PAUSES && !awaited.isDone(); i++) {
      Pause.pause(PAUSE_MILLIS);
    }
    robot.waitForIdle();
  }

  /** The component of this name that is showing, when all is done that was begun. */
  <C extends Component> C find(String name, Class<C> kind) {
    settle();
    return robot.finder().findByName(name, kind, true);
  }

  /** All words of the page of this name, as somebody who listens to it gets them. */
  String words(String name) {
    AccessibleContext page = find(name, JComponent.class).getAccessibleContext();
    AccessibleText text = page.getAccessibleText();
    return text instanceof AccessibleExtendedText words
        ? words.getTextRange(0, text.getCharCount())
        : "";
  }

  /** Presses a key while others are held down. */
  void press(int key, int... held) {
    int before = arrived.get();
    for (int one : held) {
      robot.pressKey(one);
    }
    robot.pressAndReleaseKeys(key);
    for (int one : held) {
      robot.releaseKey(one);
    }
    arrive(before + held.length + 1);
  }

  /** Clicks the component of this name. */
  void click(String name) {
    click(find(name, Component.class));
  }

  /** Clicks the middle of a component. */
  void click(Component component) {
    clicked(1, () -> robot.click(component));
  }

  /** Clicks a point of a component. */
  void click(Component component, Point at) {
    clicked(1, () -> robot.click(component, at));
  }

  /** Clicks a component with one of the buttons, once or several times. */
  void click(Component component, MouseButton button, int times) {
    clicked(times, () -> robot.click(component, button, times));
  }

  /** Clicks a point of a component several times. */
  void click(Component component, Point at, int times) {
    clicked(times, () -> robot.click(component, at, MouseButton.LEFT_BUTTON, times));
  }

  private void clicked(int times, Runnable action) {
    int before = arrived.get();
    action.run();
    arrive(before + times);
  }

  /** Whether a component of this name can be seen, in the window or in what it opened. */
  boolean shows(String name) {
    return !robot.finder().findAll(new NameMatcher(name, true)).isEmpty();
  }

  /** Types a text where the focus is. */
  void type(String text) {
    int before = arrived.get();
    robot.enterText(text);
    arrive(before + text.length());
  }

  /**
   * Waits until so many keys and buttons were let go before the window's eyes, and what they began
   * is done. A screen server takes its time to pass on what was pressed.
   */
  private void arrive(int expected) {
    for (int i = 0; i < MOST_PAUSES && arrived.get() < expected; i++) {
      Pause.pause(PAUSE_MILLIS);
    }
    settle();
  }

  /** Puts the focus on a component, as Tab or F6 would. */
  void focus(String name) {
    robot.focusAndWaitForFocusGain(find(name, JComponent.class));
  }

  /** All components of the window that are showing. */
  List<Component> showing() {
    return ask(
        () -> {
          List<Component> all = new ArrayList<>();
          JFrame shown = desk.window().frame();
          collect(shown.getRootPane(), all);
          return all;
        });
  }

  private static void collect(Container container, List<Component> all) {
    for (Component child : container.getComponents()) {
      if (child.isShowing()) {
        all.add(child);
        if (child instanceof Container nested) {
          collect(nested, all);
        }
      }
    }
  }

  @Override
  public void close() {
    Toolkit.getDefaultToolkit().removeAWTEventListener(letGo);
    robot.cleanUp();
    workers.close();
    ask(
        () -> {
          emptyClosedWindows();
          Theme.apply(ThemeChoice.LIGHT, 100);
          return true;
        });
  }

  /**
   * Closed windows are kept by the toolkit for a while, and a new theme goes through all of them.
   */
  private static void emptyClosedWindows() {
    for (Window closed : Window.getWindows()) {
      if (!closed.isDisplayable() && closed instanceof RootPaneContainer window) {
        window.getLayeredPane().removeAll();
      }
    }
  }
}
