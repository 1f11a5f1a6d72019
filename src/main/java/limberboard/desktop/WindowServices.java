package limberboard.desktop;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Delay;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Memory;
import limberboard.desktop.boats.BoatStore;
import limberboard.desktop.drills.DrillSources;
import limberboard.desktop.find.SearchSource;
import limberboard.desktop.letters.LetterNotes;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.Outlets;
import limberboard.desktop.trace.TraceStore;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.desktop.write.state.PageRecord;
import limberboard.desktop.write.state.TextStore;
import limberboard.desktop.write.state.WriteOutside;
import limberboard.drill.file.CoursePages;
import limberboard.library.Library;
import limberboard.library.TypingReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.problem.Problem;
import limberboard.search.SearchWords;
import limberboard.workings.sums.SumUseCheck;
import limberboard.workings.sums.Sums;
import limberboard.writing.change.Renamer;

/**
 * Everything outside the window that it touches.
 *
 * @param folders where files lie
 * @param recorded where the versions of pages lie: the same, but in pictures
 * @param noted where the notes of this desk lie: the same, but in pictures
 * @param reader reads the workspace, off the event thread
 * @param index brings the search index up to date, off the event thread
 * @param boats writes boats, off the event thread
 * @param logs writes boats' logs, off the event thread
 * @param traces keeps traces until next time, off the event thread
 * @param guard is told of work that must not run on the event thread
 * @param clock says what day it is
 * @param memory remembers settings
 * @param threads run work
 * @param typing waits for a pause in typing
 * @param outlets where what is read goes: files, printers, other programs
 * @param clipboard takes text for other programs
 * @param copied takes text with its structure for other programs
 * @param arriving the ways by which letters come in
 * @param courses the ways by which drills come in
 * @param writing what pages are written with
 */
record WindowServices(
    WorkspaceFolders folders,
    Supplier<WorkspaceFolders> recorded,
    WorkspaceFolders noted,
    Reader reader,
    Index index,
    BoatStore boats,
    LogStore logs,
    TraceStore traces,
    Guard guard,
    Clock clock,
    Memory memory,
    Threads threads,
    Delay typing,
    Outlets outlets,
    Consumer<String> clipboard,
    Consumer<Copied> copied,
    Arriving arriving,
    DrillSources courses,
    Writing writing) {

  /** The workspace's name. */
  String name() {
    Path last = folders.root().getFileName();
    return last == null ? folders.root().toString() : last.toString();
  }

  /** Reads the workspace. */
  interface Reader {
    /**
     * Reads it as it is now.
     *
     * @throws IOException when it cannot be read at all
     */
    Workspace read() throws IOException;

    /**
     * A reader of a page that is typed, against all others as they were last read; on the thread
     * that reads the workspace.
     *
     * @param path of the page's file, relative to the workspace
     * @param kind what its folder holds
     */
    TypingReader typing(String path, Kind kind);

    /**
     * Reads it from its files, once a renaming that was cut short has come to its end, with the
     * sums of the trade and the words for search checked.
     */
    static Reader of(WorkspaceFolders folders) {
      WorkspaceReader reader =
          new WorkspaceReader(folders, List.of(new SumUseCheck(Sums.ofTheTrade())));
      Renamer renamer = new Renamer(folders);
      return of(
          () -> {
            List<Problem> cutShort = renamer.finish();
            return reader.read().with(SearchWords.read(folders).problems()).with(cutShort);
          },
          reader::typing);
    }

    /** The same, with the courses checked as they are played on the clock's day. */
    static Reader of(WorkspaceFolders folders, Clock clock) {
      Reader reader = of(folders);
      return of(
          () -> {
            Workspace read = reader.read();
            return read.with(new CoursePages(read, LocalDate.now(clock)).problems(folders));
          },
          reader::typing);
    }

    /** Reads it so, and pages that are typed so. */
    static Reader of(Reading reading, WriteOutside.Readers typing) {
      return new Reader() {
        @Override
        public Workspace read() throws IOException {
          return reading.read();
        }

        @Override
        public TypingReader typing(String path, Kind kind) {
          return typing.of(path, kind);
        }
      };
    }

    /** Reads the workspace as it is now. */
    @FunctionalInterface
    interface Reading {
      /**
       * Reads it.
       *
       * @throws IOException when it cannot be read at all
       */
      Workspace read() throws IOException;
    }
  }

  /** The search index. */
  @FunctionalInterface
  interface Index {
    /**
     * Brings it up to date.
     *
     * @throws IOException when it cannot be written
     */
    SearchSource update(Library library) throws IOException;
  }

  /**
   * The ways by which letters come in, and where is kept what is noted of them.
   *
   * @param askFiles asks for files to be opened; none means that nothing is
   * @param pasted the text that another program has copied
   * @param notes keeps what is noted of letters, off the event thread
   */
  record Arriving(
      Supplier<List<Path>> askFiles, Supplier<Optional<String>> pasted, LetterNotes notes) {}

  /**
   * What pages are written with.
   *
   * @param pause waits for a pause in typing before the text is looked at
   * @param tables waits for a pause in filling a symptom's table before it is gone through
   * @param keeping waits for a pause in typing before the text is kept
   * @param texts keeps what is not saved
   * @param record records what is saved
   * @param pictures asks for pictures to be put in
   */
  record Writing(
      Delay pause,
      Delay tables,
      Delay keeping,
      TextStore texts,
      PageRecord record,
      Supplier<List<Path>> pictures) {
    /** Without anything that lies outside the window, for pictures of it. */
    static final Writing NONE =
        new Writing(
            Runnable::run, Runnable::run, Runnable::run, TextStore.NONE, PageRecord.NONE, List::of);

    /**
     * What the place touches outside the window.
     *
     * @param outside what the window touches
     * @param library reads and writes files
     * @param looking looks at what is typed
     * @param proofs proofreads what is typed
     */
    WriteOutside with(
        WindowServices outside, Background library, Background looking, Background proofs) {
      return new WriteOutside(
          outside.folders(),
          outside.reader()::typing,
          library,
          looking,
          proofs,
          pause,
          keeping,
          texts,
          record,
          pictures,
          outside.clock(),
          outside.guard());
    }
  }

  /**
   * What runs work.
   *
   * @param library reads the workspace, builds the index, writes boats
   * @param search searches
   * @param pages renders
   * @param trees draws out whole trees
   * @param letters reads and recognises letters
   * @param drills makes, plays and marks drills
   * @param versions reads and records versions, shares them
   * @param findings proofreads all pages, follows the plans of all symptoms
   * @param written proofreads the page that is written, follows its plans
   * @param event the event thread
   */
  record Threads(
      Executor library,
      Executor search,
      Executor pages,
      Executor trees,
      Executor letters,
      Executor drills,
      Executor versions,
      Executor findings,
      Executor written,
      Executor event) {}
}
