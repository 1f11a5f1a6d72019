package limberboard.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Own;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.Copying;
import limberboard.sharing.HowFar;
import limberboard.sharing.Sending;

/**
 * An invented history of one page, and a dealer's copy that changed the same, in a folder that goes
 * when the program ends: for pictures, which show nobody's real history.
 */
final class SampleHistory {
  /** The page. */
  static final String PAGE = "rebed-deck-fitting";

  private static final String FILE = "articles/procedures/" + PAGE + ".md";
  private static final String LAST = "18. Cut the squeezed-out edge flush with a sharp knife.";
  private static final String OTHER = "articles/procedures/seal-one-screw.md";
  private static final Author YARD = new Author("Isla, the yard", "");
  private static final Author DEALER = new Author("Bram, the dealer", "");
  private final WorkspaceFolders demo;
  private Optional<WorkspaceFolders> made = Optional.empty();

  /** A history of a page of the demo. */
  SampleHistory(WorkspaceFolders demo) {
    this.demo = demo;
  }

  /** The workspace with the history, made when it is first asked for. */
  WorkspaceFolders folders() {
    if (made.isEmpty()) {
      try {
        made = Optional.of(make());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return made.get();
  }

  private WorkspaceFolders make() throws IOException {
    Path folder = Files.createTempDirectory("limberboard-history");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
    WorkspaceFolders yard = NewWorkspace.in(folder.resolve("yard"));
    String now = Files.readString(demo.root().resolve(FILE));
    String first =
        now.replace("minutes: 90", "minutes: 60")
            .replace(
                " Take a quarter less when the threads are greased,",
                " Go easy on greased threads,")
            .replace(", sharp-knife", "");
    write(yard, FILE, first);
    write(yard, OTHER, Files.readString(demo.root().resolve(OTHER)));
    Beginning.begin(yard, YARD, at("2025-11-03T09:00:00Z"));
    String second = first.replace("minutes: 60", "minutes: 90");
    record(yard, second, "It takes longer than we said", YARD, "2026-01-14T10:20:00Z");
    record(
        yard,
        now.replace("half a turn, crosswise", "a quarter turn, one after the other"),
        "Say how hard greased threads are drawn up",
        DEALER,
        "2026-03-02T16:05:00Z");
    record(yard, now, "Crosswise, and half a turn", YARD, "2026-04-21T08:45:00Z");
    share(yard, folder.resolve("shared.git"), folder.resolve("dealer"));
    return yard;
  }

  /** What the dealer changed is sent; what the yard changed meanwhile is not. */
  private static void share(WorkspaceFolders yard, Path remote, Path dealer) throws IOException {
    Connection connection =
        new Connection(Asking.nobody(), List.of("ssh"), List.of(), HowFar.silent());
    try (HistoryFolder place = HistoryFolder.of(yard).orElseThrow()) {
      new CopyRole(Own.YARD).writeTo(place.repository());
      new Sending(place, connection).push(YARD, Optional.of(remote.toString()), true);
    }
    new Copying(connection).copy(remote.toString(), dealer, new CopyRole(Own.DEALER));
    WorkspaceFolders copy = new WorkspaceFolders(dealer);
    String text = Files.readString(dealer.resolve(FILE));
    write(
        copy,
        FILE,
        text.replace("minutes: 90", "minutes: 120")
            .replace("for ten minutes.", "for a quarter of an hour.")
            .replace(LAST, LAST + " A scraper of hardwood does it too."));
    write(
        copy,
        OTHER,
        Files.readString(dealer.resolve(OTHER)).stripTrailing()
            + "\n\nLook again after the first rain.\n");
    try (HistoryFolder place = HistoryFolder.of(copy).orElseThrow()) {
      new Sending(place, connection).push(DEALER, Optional.empty(), false);
    }
    write(
        yard,
        FILE,
        text.replace("minutes: 90", "minutes: 105").replace(LAST, LAST + " Pull it towards you."));
  }

  private static void record(
      WorkspaceFolders folders, String text, String said, Author author, String when)
      throws IOException {
    write(folders, FILE, text);
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(place, at(when));
      recorder.record(recorder.unrecorded(), said, author);
    }
  }

  private static Clock at(String when) {
    return Clock.fixed(Instant.parse(when), ZoneOffset.UTC);
  }

  private static void write(WorkspaceFolders folders, String file, String text) throws IOException {
    Path at = folders.root().resolve(file);
    Files.createDirectories(at.getParent());
    Files.writeString(at, text);
  }

  static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    } catch (IOException e) {
      // the system clears its folder of temporary files by itself
    }
  }
}
