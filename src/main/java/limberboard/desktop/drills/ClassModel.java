package limberboard.desktop.drills;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.drill.learn.ClassResults;
import limberboard.library.problem.Problem;

/**
 * The results of a class, gathered from a folder and marked in the background. No file is changed.
 * For the event thread only.
 */
final class ClassModel extends Observed {
  private final Session session;
  private final Latest latest;
  private final Guard guard;
  private Optional<Gathered> gathered = Optional.empty();
  private Optional<Gathering> gathering = Optional.empty();
  private boolean byMistake;

  private record Gathering(AtomicBoolean stopped, AtomicInteger files) {}

  /**
   * What was gathered.
   *
   * @param from the folder
   * @param results what could be marked
   * @param refused what could not, each with the reason
   */
  record Gathered(Path from, ClassResults results, List<String> refused) {}

  ClassModel(Session session, Background background, Guard guard) {
    this.session = session;
    this.latest = new Latest(background);
    this.guard = guard;
  }

  /** What was gathered last. */
  Optional<Gathered> gathered() {
    return gathered;
  }

  /** Whether minutes lost are shown by kind of mistake rather than by symptom. */
  boolean isByMistake() {
    return byMistake;
  }

  /** Shows them by kind of mistake, or by symptom. */
  void byMistake(boolean wanted) {
    byMistake = wanted;
    tell();
  }

  /** Whether results are being marked. */
  boolean isGathering() {
    return gathering.isPresent();
  }

  /** How many files have been read so far. */
  int soFar() {
    return gathering.map(now -> now.files().get()).orElse(0);
  }

  /** What a symptom is called. */
  String symptom(String id) {
    return session.library().symptom(id).map(page -> page.title()).orElse(id);
  }

  /** Gathers the results in a folder. */
  void gather(Path folder) {
    stop();
    Gathering now = new Gathering(new AtomicBoolean(), new AtomicInteger());
    gathering = Optional.of(now);
    WorkspaceDrills drills = new WorkspaceDrills(session.workspace(), session.today());
    tell();
    latest.run("Marking the class", () -> gather(folder, drills, now), this::take, this::stop);
  }

  private Optional<Gathered> gather(Path folder, WorkspaceDrills drills, Gathering now)
      throws IOException {
    guard.begins("marking a class");
    List<ClassResults.Played> played = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    try {
      for (Path file : files(folder)) {
        stopWhenAsked(now);
        read(file, drills, now, played, refused);
        now.files().incrementAndGet();
      }
    } catch (CancellationException e) {
      return Optional.empty();
    }
    return Optional.of(new Gathered(folder, new ClassResults(played), refused));
  }

  private static List<Path> files(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    try (var inside = Files.newDirectoryStream(folder, "*" + DrillFiles.ENDING)) {
      inside.forEach(files::add);
    }
    files.sort(null);
    return files;
  }

  private static void stopWhenAsked(Gathering now) {
    if (now.stopped().get()) {
      throw new CancellationException();
    }
  }

  private static void read(
      Path file,
      WorkspaceDrills drills,
      Gathering now,
      List<ClassResults.Played> played,
      List<String> refused) {
    DrillFiles.Read read = new DrillFiles().read(file);
    read.problems().stream().map(Problem::toString).forEach(refused::add);
    if (read.drill().isEmpty()) {
      if (read.problems().isEmpty()) {
        refused.add(file.getFileName() + " is no result that can be read");
      }
      return;
    }
    try {
      played.add(drills.played(read.drill().get(), step -> stopWhenAsked(now)));
    } catch (IllegalArgumentException e) {
      refused.add(file.getFileName() + ": " + e.getMessage());
    }
  }

  private void take(Optional<Gathered> found) {
    gathering = Optional.empty();
    gathered = found.or(() -> gathered);
    tell();
  }

  /** Stops gathering; what was gathered before stays. */
  void stop() {
    gathering.ifPresent(now -> now.stopped().set(true));
    gathering = Optional.empty();
    latest.drop();
    tell();
  }
}
