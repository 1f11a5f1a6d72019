package limberboard.boat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.LogEvents;

/**
 * Writes a boat's files from several programs at once, and from programs that are killed, and looks
 * whether anything that was acknowledged is lost. Run it with {@code writers N} or {@code kills N
 * SEED}; the exit code is 1 when something was lost.
 */
final class Endurance {
  private static final String BOAT = "knot";
  private static final String BOAT_TEXT =
      "# shared by two\nname: Knot\nmodel: plover-20\nsail-number: 4711\n"
          + "hull: 17 # as on the transom\nbuilt: 2014\n";
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  private final Path folder;
  private final WorkspaceFolders folders;
  private final List<String> wrong = new ArrayList<>();
  private Consumer<String> progress = words -> {};

  Endurance(Path folder) {
    this.folder = folder;
    this.folders = new TestWorkspace(folder).folders();
  }

  public static void main(String[] args) throws Exception {
    switch (args[0]) {
      case "write-log" -> Writers.log(Path.of(args[1]), args[2], Integer.parseInt(args[3]));
      case "write-boat" -> Writers.boat(Path.of(args[1]), args[2], Integer.parseInt(args[3]));
      default -> {
        Path folder = Files.createTempDirectory("endurance");
        Endurance endurance = new Endurance(folder);
        int count = Integer.parseInt(args[1]);
        endurance.progress = System.out::println;
        if (args[0].equals("writers")) {
          endurance.writers(count).forEach(System.out::println);
        } else {
          endurance.kills(count, Long.parseLong(args[2])).forEach(System.out::println);
        }
        endurance.wrong().forEach(each -> System.out.println("LOST: " + each));
        delete(folder);
        System.exit(endurance.wrong().isEmpty() ? 0 : 1);
      }
    }
  }

  /** What was lost, if anything. */
  List<String> wrong() {
    return List.copyOf(wrong);
  }

  /**
   * Two programs write so many entries each into one log, then so many changes each to one boat.
   */
  List<String> writers(int each) throws IOException, InterruptedException {
    List<String> figures = new ArrayList<>();
    begin();
    Child one = new Child("write-log", folder, "one", each);
    Child two = new Child("write-log", folder, "two", each);
    List<String> said = new ArrayList<>(one.toEnd());
    said.addAll(two.toEnd());
    List<String> there = notes();
    hold(said.size() == 2 * each, said.size() + " of " + 2 * each + " acknowledged");
    hold(there.size() == 2 * each && there.containsAll(said), "log lines");
    figures.add(
        "log: 2 programs, " + said.size() + " entries acknowledged, " + there.size() + " there");
    Child note = new Child("write-boat", folder, "note", each);
    Child launch = new Child("write-boat", folder, "launched", each);
    int saved = note.toEnd().size() + launch.toEnd().size();
    Boat boat = boat();
    hold(saved == 2 * each, saved + " of " + 2 * each + " changes saved");
    hold(boat.note().equals("note " + each), "the last note: " + boat.note());
    hold(boat.launched().equals(launched(each)), "the last launch: " + boat.launched());
    String text = Files.readString(file("boat.yaml"));
    hold(text.startsWith(BOAT_TEXT), "comments and unknown keys: " + text);
    hold(litter().isEmpty(), "left over: " + litter());
    figures.add("boat: 2 programs, " + saved + " changes acknowledged, both last ones there");
    return figures;
  }

  /** So many programs are killed while they write without a pause, each at a moment of its own. */
  List<String> kills(int count, long seed) throws IOException, InterruptedException {
    Random random = new Random(seed);
    begin();
    int entries = 0;
    int unsaid = 0;
    int left = 0;
    List<String> said = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean log = i % 4 != 3;
      Child child = new Child(log ? "write-log" : "write-boat", folder, log ? "k" + i : "note", 0);
      List<String> now = child.killedAfter(random.nextInt(80));
      if (log) {
        said.addAll(now);
        List<String> there = notes();
        hold(there.containsAll(said), "after kill " + i + " of " + said.size() + " entries");
        unsaid += there.size() - entries - now.size();
        entries = there.size();
      } else {
        String last = now.isEmpty() ? "" : now.get(now.size() - 1);
        int number = last.isEmpty() ? 0 : Integer.parseInt(last.substring("note ".length()));
        String note = boat().note();
        hold(
            last.isEmpty() || note.equals(last) || note.equals("note " + (number + 1)),
            "after kill " + i + " the note is \"" + note + "\" and not \"" + last + "\"");
        hold(Files.readString(file("boat.yaml")).startsWith(BOAT_TEXT), "the rest of the boat");
      }
      left += litter().isEmpty() ? 0 : 1;
      if (i % 50 == 49) {
        progress.accept(
            (i + 1) + " killed, " + said.size() + " entries, " + wrong.size() + " lost");
      }
    }
    hold(
        new LogWriter(folders).add(BOAT, entry("last")) instanceof LogWriter.Written,
        "a last entry");
    Boat boat = boat();
    Boat named = changed(boat, "note", 1);
    hold(
        new BoatWriter(folders).save(library(folders), boat, named) instanceof BoatWriter.Saved,
        "a last change");
    hold(litter().isEmpty(), "left over: " + litter());
    return List.of(
        count + " programs killed while they wrote",
        said.size() + " entries acknowledged, all there; " + unsaid + " more written whole",
        left + " times a kill left a temporary or lock file; none after the next writing");
  }

  private void begin() throws IOException {
    Files.createDirectories(file("").getParent().resolve(BOAT));
    Files.writeString(file("boat.yaml"), BOAT_TEXT);
    Files.writeString(file("log.csv"), "date,work,engine-hours,note\n");
  }

  private void hold(boolean holds, String what) {
    if (!holds) {
      wrong.add(what);
    }
  }

  private Path file(String name) {
    return folders.boats().resolve(BOAT).resolve(name);
  }

  /** The notes of the log's lines; a line that cannot be read counts as lost. */
  private List<String> notes() throws IOException {
    LogText log = LogText.read(Files.readString(file("log.csv")));
    List<String> notes = new ArrayList<>();
    log.lines()
        .forEach(
            line ->
                log.entry(line)
                    .ifPresentOrElse(
                        entry -> notes.add(entry.note()),
                        () -> wrong.add("half a line: " + log.letters(line))));
    hold(log.csv().brokenFrom().isEmpty(), "the log is broken");
    return notes;
  }

  private Boat boat() throws IOException {
    return Endurance.read(folders);
  }

  private List<String> litter() throws IOException {
    try (Stream<Path> files = Files.list(file("").getParent().resolve(BOAT))) {
      return files
          .map(each -> each.getFileName().toString())
          .filter(name -> name.startsWith("."))
          .toList();
    }
  }

  private static Library library(WorkspaceFolders folders) throws IOException {
    return new LibraryReader(folders).read();
  }

  private static Boat read(WorkspaceFolders folders) throws IOException {
    return new WorkspaceReader(folders).read().boat(BOAT).orElseThrow();
  }

  private static LogEntry entry(String note) {
    return new LogEntry(
        DAY, LogEvents.READING, OptionalDouble.empty(), Map.of(), note, Optional.empty(), 0);
  }

  private static Boat changed(Boat boat, String what, int number) {
    boolean note = what.equals("note");
    return new Boat(
        boat.id(),
        boat.name(),
        boat.model(),
        boat.hull(),
        boat.built(),
        note ? boat.launched() : launched(number),
        boat.use(),
        boat.water(),
        boat.exposure(),
        boat.equipment(),
        boat.season(),
        note ? "note " + number : boat.note(),
        boat.log());
  }

  private static Optional<LocalDate> launched(int number) {
    return Optional.of(LocalDate.of(2014, 5, 1).plusDays(number));
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** What the other programs do: write, and say so once it is written. */
  private static final class Writers {
    private Writers() {}

    static void log(Path folder, String name, int count) {
      LogWriter book = new LogWriter(new WorkspaceFolders(folder));
      for (int i = 1; count == 0 || i <= count; i++) {
        LogWriter.Outcome outcome = book.add(BOAT, entry(name + " " + i));
        if (outcome instanceof LogWriter.Written) {
          System.out.println(name + " " + i);
        } else {
          System.err.println(outcome);
        }
      }
    }

    static void boat(Path folder, String what, int count) throws IOException {
      WorkspaceFolders folders = new WorkspaceFolders(folder);
      Library library = library(folders);
      BoatWriter writer = new BoatWriter(folders);
      Boat boat = read(folders);
      for (int i = 1; count == 0 || i <= count; i++) {
        BoatWriter.Outcome outcome = writer.save(library, boat, changed(boat, what, i));
        if (outcome instanceof BoatWriter.Saved saved) {
          boat = saved.boat();
          System.out.println(what + " " + i);
        } else {
          System.err.println(outcome);
        }
      }
    }
  }

  /** Another program. */
  private static final class Child {
    private final Process process;
    private final Path said;

    Child(String what, Path folder, String name, int count) throws IOException {
      said = Files.createTempFile("endurance", ".out");
      process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-XX:+UseSerialGC",
                  "-cp",
                  System.getProperty("java.class.path"),
                  Endurance.class.getName(),
                  what,
                  folder.toString(),
                  name,
                  Integer.toString(count))
              .redirectOutput(said.toFile())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
    }

    List<String> toEnd() throws IOException, InterruptedException {
      process.waitFor();
      return said();
    }

    /** Waits for the first word, then a moment, and kills; a last word cut short does not count. */
    List<String> killedAfter(int milliseconds) throws IOException, InterruptedException {
      while (process.isAlive() && Files.size(said) == 0) {
        TimeUnit.MILLISECONDS.sleep(2);
      }
      TimeUnit.MILLISECONDS.sleep(milliseconds);
      process.destroyForcibly().waitFor();
      return said();
    }

    private List<String> said() throws IOException {
      String text = Files.readString(said);
      Files.delete(said);
      return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }
  }
}
