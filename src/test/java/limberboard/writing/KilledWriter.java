package limberboard.writing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.Recorder;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.search.SearchIndex;
import limberboard.search.UpdateReport;
import limberboard.sharing.PullOutcome;
import limberboard.writing.change.RenameOutcome;
import limberboard.writing.change.Renamer;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/** The program that is killed: it works without a pause and says what it has done, line by line. */
final class KilledWriter {
  /** What it does, in an order of its own each time; {@code doing} and one of these is said. */
  enum Task {
    SAVE,
    RENAME,
    INDEX,
    MERGE,
    PUSH
  }

  private final WorkspaceFolders folders;
  private final KeptTexts texts;
  private final LibraryReader reader;
  private final Random random;

  private KilledWriter(Path folder, long seed) {
    folders = new WorkspaceFolders(folder.resolve("yard"));
    UserFolders user =
        new UserFolders(folder.resolve("c"), folder.resolve("s"), folder.resolve("k"));
    texts = new KeptTexts(user, folders);
    reader = new LibraryReader(folders);
    random = new Random(seed);
  }

  /** Works until it is killed, or a file {@code stop} is there: {@code FOLDER SEED}. */
  public static void main(String[] args) throws IOException {
    new KilledWriter(Path.of(args[0]), Long.parseLong(args[1])).run(Path.of(args[0], "stop"));
  }

  private void run(Path stop) throws IOException {
    reader.read();
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      new Recorder(place).unrecorded();
    }
    say("ready");
    List<Task> order = new ArrayList<>(Arrays.asList(Task.values()));
    Collections.shuffle(order, random);
    while (!Files.exists(stop)) {
      for (Task work : order) {
        say("doing " + work);
        switch (work) {
          case SAVE -> save(random.nextInt(KilledPages.COUNT));
          case RENAME -> rename(reader.read());
          case INDEX -> index(reader.read());
          case MERGE -> merge();
          case PUSH -> push();
          default -> throw new IllegalStateException(work.name());
        }
        say("done " + work);
      }
    }
  }

  private static void say(String words) {
    System.out.println(words);
    System.out.flush();
  }

  private void save(int page) throws IOException {
    PageFile file = new PageFile(folders, KilledPages.path(page));
    PageText old = ((PageFile.Ready) file.open()).page().orElseThrow();
    int version = KilledPages.version(old.text()).orElseThrow() + 1;
    String hub = old.text().replaceAll("(?s).*/(hub-[0-9]+)\\.md.*", "$1");
    PageText now = KilledPages.page(page, version, KilledPages.there(old.text()), hub, random);
    texts.keep(KeptText.of(KilledPages.path(page), Optional.of(old), Instant.EPOCH, now));
    say("kept " + page + " " + version);
    SaveOutcome outcome = file.save(Optional.of(old), now);
    if (outcome instanceof SaveOutcome.Saved) {
      say("saved " + page + " " + version);
      texts.forget(KilledPages.path(page));
    } else {
      say("not saved: " + outcome);
    }
  }

  private void rename(Library library) {
    String hub =
        library.pages().stream()
            .<String>map(Page::id)
            .filter(id -> id.startsWith(KilledPages.HUB))
            .findFirst()
            .orElseThrow();
    String to = KilledPages.HUB + "-" + (KilledPages.number(hub) + 1);
    RenameOutcome outcome = new Renamer(folders).rename(library, hub, to);
    say(outcome instanceof RenameOutcome.Renamed ? "renamed " + to : "not renamed: " + outcome);
  }

  private void index(Library library) throws IOException {
    try (SearchIndex index = SearchIndex.open(folders)) {
      UpdateReport report = index.update(library);
      say("index " + (report.added() == library.pages().size() ? "anew" : "updated"));
    }
  }

  private void merge() throws IOException {
    PullOutcome outcome = OtherCopy.pull(folders);
    say(outcome instanceof PullOutcome.Open ? "not merged: " + outcome : "merged");
  }

  /** What the other copy has is not always pulled yet; that is said, and pushed later. */
  private void push() throws IOException {
    try {
      OtherCopy.push(folders);
      say("pushed");
    } catch (HistoryTrouble e) {
      say(e.getMessage().contains("have not pulled") ? "behind" : "not pushed: " + e.getMessage());
    }
  }
}
