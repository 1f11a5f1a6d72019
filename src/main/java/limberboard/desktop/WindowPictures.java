package limberboard.desktop;

import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import limberboard.boat.BoatWriter;
import limberboard.boat.LogWriter;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Settings;
import limberboard.desktop.drills.DrillSources;
import limberboard.desktop.letters.LetterNotes;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.read.Outlets;
import limberboard.desktop.read.Printing;
import limberboard.desktop.trace.TraceStore;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.SearchResults;

/**
 * Makes pictures of the real window in its usual states, for the user guide and the front page:
 * {@code trace-before}, {@code trace-during}, {@code trace-after}, {@code trace-why}, {@code
 * trace-tree}, {@code pages}, {@code upkeep-due}, {@code upkeep-done}, {@code upkeep-time-line},
 * {@code upkeep-list}, {@code upkeep-shopping}, {@code upkeep-rigging}, {@code upkeep-workings},
 * {@code upkeep-log}, {@code letters}, {@code letters-urgent}, {@code letters-answer}, {@code
 * letters-statistics}, {@code letters-next}, {@code drills-choose}, {@code drills-work}, {@code
 * drills-step}, {@code drills-look-back}, {@code drills-class}, {@code drills-projector}, {@code
 * drills-projector-look-back}, {@code findings}, {@code notes}, {@code history-changed}, {@code
 * history-then}, {@code merge-settle}, {@code merge-came}, {@code boats}, {@code write-pages},
 * {@code write}, {@code write-proofread}, {@code write-header}, {@code write-new}, {@code
 * write-delete}, {@code write-both}, {@code symptom-editor-table} and {@code symptom-editor-try},
 * each in both themes. The window is driven through its models and painted as it stands; a display
 * is needed, and a virtual one will do.
 */
public final class WindowPictures {
  private final WorkspaceFolders folders;
  private final LocalDate today;
  private final Dimension size;
  private final int textPercent;
  private final Workers workers = new Workers();
  private final WorkspaceFolders noted;

  /**
   * A maker of pictures.
   *
   * @param folders the workspace that is shown
   * @param today the day it is in the pictures
   * @param size in pixels
   * @param textPercent text size, 100 to 200
   */
  public WindowPictures(
      WorkspaceFolders folders, LocalDate today, Dimension size, int textPercent) {
    this.folders = folders;
    this.today = today;
    this.size = new Dimension(size);
    this.textPercent = textPercent;
    this.noted = SampleNotes.made(today);
  }

  /**
   * Makes all pictures.
   *
   * @param to the folder they are written to, made where needed
   * @throws IOException when a picture cannot be written or the window cannot be shown
   */
  public void make(Path to) throws IOException {
    Files.createDirectories(to);
    for (ThemeChoice theme : ThemeChoice.values()) {
      String ending = "-" + theme.name().toLowerCase(Locale.ROOT) + ".png";
      for (Scene scene : Scene.values()) {
        Path file = to.resolve(scene.fileName() + ending);
        Painter painter = OnEventThread.get(() -> new Painter(desk(theme), size));
        OnEventThread.run(() -> painter.set(scene));
        Files.write(file, painter.png());
        OnEventThread.run(painter::close);
      }
    }
  }

  /** The window with everything in step; on the event thread. */
  WindowAssembly desk(ThemeChoice theme) {
    Memory memory = new Memory(new Forgetful());
    Settings settings = new Settings(memory);
    settings.theme(theme);
    settings.textPercent(textPercent);
    Theme.installFonts();
    Theme.apply(theme, settings.textPercent());
    return new WindowAssembly(outside(memory), settings);
  }

  /** Nothing leaves the program while pictures are made. */
  private static Outlets nowhere() {
    Printing none =
        new Printing() {
          @Override
          public boolean hasPrinter() {
            return false;
          }

          @Override
          public Optional<Order> ask(String name) {
            return Optional.empty();
          }
        };
    return new Outlets(name -> Optional.empty(), none, file -> {});
  }

  /**
   * Everything in step on the event thread, so that a picture shows what has been asked for; but
   * what takes long is done off it, and waited for before anything is painted.
   */
  private WindowServices outside(Memory memory) {
    Executor direct = Runnable::run;
    return new WindowServices(
        folders,
        new SampleHistory(folders)::folders,
        noted,
        WindowServices.Reader.of(folders),
        library -> query -> SearchResults.none(),
        (library, base, boat) -> new BoatWriter.Saved(boat),
        LogStore.of(new LogWriter(folders)),
        TraceStore.NONE,
        Guard.NONE,
        Clock.fixed(today.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC),
        memory,
        new WindowServices.Threads(
            direct,
            direct,
            direct,
            direct,
            direct,
            direct,
            direct,
            workers.findings(),
            workers.written(),
            OnEventThread::soon),
        Runnable::run,
        nowhere(),
        text -> {},
        copied -> {},
        new WindowServices.Arriving(List::of, Optional::empty, LetterNotes.NONE),
        DrillSources.NONE,
        WindowServices.Writing.NONE);
  }
}
