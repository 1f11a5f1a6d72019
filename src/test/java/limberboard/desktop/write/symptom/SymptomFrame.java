package limberboard.desktop.write.symptom;

import java.awt.AWTEvent;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JRootPane;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.look.Palette;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.tree.TreeOut;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.TreeCut;
import limberboard.writing.PageText;
import limberboard.writing.typing.PageTyping;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.timing.Pause;

/** A symptom's editor in a window of its own on a copy of the demo, with real threads and keys. */
final class SymptomFrame implements AutoCloseable {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private static final int MOST_PAUSES = 2400;
  private static final int PAUSE_MILLIS = 25;
  private final WorkspaceFolders folders;
  private final Session session;
  private final List<ExecutorService> workers = new ArrayList<>();
  private final Notices notices = new Notices();
  private final List<PageText> changes = Collections.synchronizedList(new ArrayList<>());
  private final List<Throwable> thrown = Collections.synchronizedList(new ArrayList<>());
  private final AtomicInteger pressed = new AtomicInteger();
  private final AWTEventListener counter = this::count;
  private final Robot robot;
  private final JFrame frame;
  private final SymptomModel model;
  private final SymptomPanel panel;
  private LibraryReader reader;

  SymptomFrame(Path folder, Dimension size, ThemeChoice theme, int percent) throws IOException {
    folders = copied(folder);
    Thread.setDefaultUncaughtExceptionHandler((thread, what) -> thrown.add(what));
    robot = BasicRobot.robotWithNewAwtHierarchy();
    robot.settings().delayBetweenEvents(3);
    robot.settings().eventPostingDelay(10);
    Toolkit.getDefaultToolkit().addAWTEventListener(counter, AWTEvent.KEY_EVENT_MASK);
    Workspace workspace = read();
    session =
        new Session(
            Clock.fixed(TODAY.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC),
            Optional.of("dunlin"));
    model =
        ask(
            () -> {
              Theme.installFonts();
              Theme.apply(theme, percent);
              session.replace(workspace);
              return new SymptomModel(
                  new SymptomTools(session, worker(), worker(), worker(), new ShortPause()),
                  changes::add);
            });
    panel = ask(() -> new SymptomPanel(model, new NoPapers(), new NoMemory()));
    frame = ask(() -> shown(size));
  }

  private JFrame shown(Dimension size) {
    JFrame made = new JFrame("A symptom");
    panel.setBorder(BorderFactory.createEmptyBorder(12, 18, 12, 18));
    made.getContentPane().setBackground(Palette.PAPER.color());
    made.getContentPane().add(panel);
    made.getRootPane().setPreferredSize(size);
    made.pack();
    made.setVisible(true);
    return made;
  }

  private static WorkspaceFolders copied(Path folder) throws IOException {
    for (String part : List.of("articles", "index/words", "demo-boats")) {
      try (Stream<Path> all = Files.walk(Path.of(part))) {
        for (Path each : all.toList()) {
          Path to = folder.resolve(each.toString());
          Files.createDirectories(to.getParent());
          if (!Files.exists(to)) {
            Files.copy(each, to);
          }
        }
      }
    }
    return new WorkspaceFolders(folder);
  }

  /** The workspace as its files are now. */
  Workspace read() throws IOException {
    reader = new LibraryReader(folders);
    reader.read();
    return new WorkspaceReader(folders).read();
  }

  private Background worker() {
    ExecutorService worker =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task, "symptom-worker");
              thread.setDaemon(true);
              return thread;
            });
    workers.add(worker);
    return new Background(
        task ->
            worker.execute(
                () -> {
                  if (EventQueue.isDispatchThread()) {
                    thrown.add(new AssertionError("slow work on the event thread"));
                  }
                  task.run();
                }),
        EventQueue::invokeLater,
        new Activity(),
        notices);
  }

  /** Shows a page. */
  void show(String id, PageText page) {
    PageTyping typing =
        new PageTyping(reader.typing("articles/symptoms/" + id + ".md", Kind.SYMPTOM));
    ask(
        () -> {
          model.show(id, page, typing::read);
          panel.first().requestFocusInWindow();
          return true;
        });
  }

  /** Shows a page of the demo. */
  void show(String id) throws IOException {
    show(id, new PageText(Files.readString(file(id))));
  }

  Path file(String id) {
    return folders.root().resolve("articles/symptoms/" + id + ".md");
  }

  private void count(AWTEvent event) {
    int code = event instanceof KeyEvent key ? key.getKeyCode() : 0;
    boolean held =
        code == KeyEvent.VK_SHIFT || code == KeyEvent.VK_CONTROL || code == KeyEvent.VK_ALT;
    if (event.getID() == KeyEvent.KEY_PRESSED && !held) {
      pressed.incrementAndGet();
    }
  }

  /** How many keys were pressed so far; those that are held with others do not count. */
  int pressed() {
    return pressed.get();
  }

  /** Presses a key, with others held. */
  void press(int key, int... held) {
    int before = pressed.get();
    for (int one : held) {
      robot.pressKey(one);
    }
    robot.pressAndReleaseKeys(key);
    for (int one : held) {
      robot.releaseKey(one);
    }
    arrive(before + 1);
  }

  /** Presses a key so many times. */
  void repeat(int times, int key) {
    for (int i = 0; i < times; i++) {
      press(key);
    }
  }

  /** Types a text. */
  void type(String text) {
    int before = pressed.get();
    for (String line : text.split("(?<=\n)|(?=\n)")) {
      if (line.equals("\n")) {
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
      } else {
        robot.enterText(line);
      }
    }
    arrive(before + text.length());
  }

  private void arrive(int wanted) {
    until("the keys have arrived", () -> pressed.get() >= wanted);
    robot.waitForIdle();
  }

  /** Waits for something that is asked on the event thread. */
  void until(String what, BooleanSupplier reached) {
    for (int i = 0; i < MOST_PAUSES; i++) {
      if (ask(reached::getAsBoolean)) {
        return;
      }
      Pause.pause(PAUSE_MILLIS);
    }
    throw new AssertionError(
        "waited in vain until " + what + "; " + ask(() -> model.findings()) + failures());
  }

  /** Waits until nothing is being worked out. */
  void settle() {
    until("everything is worked out", () -> !model.isWorking() && !model.tree().isGrowing());
    robot.waitForIdle();
  }

  /** Asks on the event thread. */
  <T> T ask(Callable<T> question) {
    List<T> answer = new ArrayList<>();
    try {
      EventQueue.invokeAndWait(
          () -> {
            try {
              answer.add(question.call());
            } catch (Exception e) {
              throw new IllegalStateException(e);
            }
          });
    } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
    return answer.get(0);
  }

  SymptomModel model() {
    return model;
  }

  SymptomPanel panel() {
    return panel;
  }

  List<PageText> changes() {
    return List.copyOf(changes);
  }

  /** What was thrown and caught by nobody, and notices of failures. */
  List<String> failures() {
    List<String> all = new ArrayList<>();
    thrown.forEach(each -> all.add(each.toString()));
    return all;
  }

  /** The window's content as it stands. */
  BufferedImage picture() {
    BufferedImage image = ask(this::paint);
    for (int i = 0; i < 3; i++) {
      image = ask(this::paint);
    }
    return image;
  }

  private BufferedImage paint() {
    JRootPane root = frame.getRootPane();
    root.validate();
    Dimension size = root.getSize();
    BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    root.paint(g);
    g.dispose();
    return image;
  }

  @Override
  public void close() {
    Toolkit.getDefaultToolkit().removeAWTEventListener(counter);
    robot.cleanUp();
    ask(
        () -> {
          frame.dispose();
          Theme.apply(ThemeChoice.LIGHT, 100);
          return true;
        });
    workers.forEach(ExecutorService::shutdownNow);
    Thread.setDefaultUncaughtExceptionHandler(null);
    if (!Files.exists(folders.root())) {
      throw new UncheckedIOException(new IOException("the folder is gone"));
    }
  }

  private static final class ShortPause implements limberboard.desktop.base.Delay {
    private javax.swing.Timer timer;

    @Override
    public void restart(Runnable action) {
      if (timer != null) {
        timer.stop();
      }
      timer = new javax.swing.Timer(120, e -> action.run());
      timer.setRepeats(false);
      timer.start();
    }
  }

  private static final class NoMemory implements Divider.Memory {
    @Override
    public OptionalInt place(String key) {
      return OptionalInt.empty();
    }

    @Override
    public void remember(String key, int thousandths) {
      // nothing is remembered
    }
  }

  private static final class NoPapers implements TreeOut {
    @Override
    public void print(TreeCut cut) {
      // nothing is printed
    }

    @Override
    public void save(TreeCut cut) {
      // nothing is saved
    }

    @Override
    public void draw(TreeCut cut) {
      // nothing is saved
    }

    @Override
    public void printCard(DiagnosticTree tree) {
      // nothing is printed
    }

    @Override
    public void saveCard(DiagnosticTree tree) {
      // nothing is saved
    }
  }
}
