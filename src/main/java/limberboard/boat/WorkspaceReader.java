package limberboard.boat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.TypingReader;
import limberboard.library.check.FurtherCheck;
import limberboard.library.file.FileBytes;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.page.Kind;
import limberboard.library.problem.Problem;

/**
 * Reads a workspace again and again; only pages that changed are parsed anew. For one thread at a
 * time.
 */
public final class WorkspaceReader {
  private final WorkspaceFolders folders;
  private final LibraryReader pages;
  private final HeaderBinder binder = new HeaderBinder();

  /** A reader of this workspace, with the library's own checks alone. */
  public WorkspaceReader(WorkspaceFolders folders) {
    this(folders, List.of());
  }

  /**
   * A reader of this workspace.
   *
   * @param further checks by others, run on every page
   */
  public WorkspaceReader(WorkspaceFolders folders, List<FurtherCheck> further) {
    this.folders = folders;
    this.pages = new LibraryReader(folders, further);
  }

  /**
   * Reads the workspace. Boats and cases that cannot be used are left out and reported.
   *
   * @throws IOException when its articles folder cannot be listed
   */
  public Workspace read() throws IOException {
    Library library = pages.read();
    List<Problem> problems = new ArrayList<>(library.problems());
    List<Boat> boats = boats(library, problems);
    Map<String, Stock> stocks = stocks(library, boats, problems);
    List<RecordedCase> cases = cases(library, problems);
    return new Workspace(library, boats, stocks, cases, problems);
  }

  /** Reads a page from text that is being typed: {@link LibraryReader#typing}. */
  public TypingReader typing(String path, Kind kind) {
    return pages.typing(path, kind);
  }

  private List<Boat> boats(Library library, List<Problem> problems) {
    BoatReader reader = new BoatReader(folders, library, binder);
    List<Boat> boats = new ArrayList<>();
    for (Path folder : new BoatFolders(folders, problems).boats()) {
      BoatReader.Read read = reader.read(folder);
      problems.addAll(read.problems());
      read.boat().ifPresent(boats::add);
    }
    return boats;
  }

  private Map<String, Stock> stocks(Library library, List<Boat> boats, List<Problem> problems) {
    StockReader reader = new StockReader(folders, library);
    Map<String, Stock> stocks = new HashMap<>();
    for (Boat boat : boats) {
      Path file = folders.boats().resolve(boat.id()).resolve(StockReader.STOCK);
      if (FileBytes.isThere(file)) {
        StockReader.Read read = reader.read(file);
        problems.addAll(read.problems());
        stocks.put(boat.id(), read.stock());
      }
    }
    return stocks;
  }

  private List<RecordedCase> cases(Library library, List<Problem> problems) {
    CaseReader reader = new CaseReader(folders, library, binder);
    List<RecordedCase> cases = new ArrayList<>();
    for (Path file : new BoatFolders(folders, problems).cases()) {
      CaseReader.Read read = reader.read(file);
      problems.addAll(read.problems());
      read.recorded().ifPresent(cases::add);
    }
    return cases;
  }
}
