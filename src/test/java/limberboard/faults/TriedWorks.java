package limberboard.faults;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.NewWorkspace;
import limberboard.library.TestWorkspace;
import limberboard.library.file.UserFolders;
import limberboard.moving.Archive;
import limberboard.moving.Import;
import limberboard.moving.PendingImport;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.search.UpdateReport;
import limberboard.writing.PageText;
import limberboard.writing.change.RenameOutcome;
import limberboard.writing.change.Renamer;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/** The kinds of work, by name. */
final class TriedWorks {
  static final Author ADA = new Author("Ada", "ada@example.org");

  private TriedWorks() {}

  static Map<String, TriedWork> all() {
    Map<String, TriedWork> all = new TreeMap<>();
    all.put("save", new Saving());
    all.put("keep", new Keeping());
    all.put("rename", new Renames());
    all.put("import", new Importing());
    all.put("record", new Recording());
    all.put("index", new Indexing());
    all.put("pull", new Pulling(TriedWork.page("new")));
    all.put("pull-packed-large", new Pulling(PackedLarge.page()));
    return all;
  }

  private static final class Saving implements TriedWork {
    @Override
    public void prepare(Path workspace, Path elsewhere) throws IOException {
      NewWorkspace.in(workspace);
      TriedWork.write(workspace, BIG, TriedWork.page("old"));
    }

    @Override
    public String attempt(Path workspace) {
      PageFile file = new PageFile(TriedWork.folders(workspace), BIG);
      Optional<PageText> held = ((PageFile.Ready) file.open()).page();
      SaveOutcome outcome = file.save(held, new PageText(TriedWork.page("new")));
      return outcome instanceof SaveOutcome.Refused refused ? refused.problem().toString() : DONE;
    }

    @Override
    public boolean isAsBefore(Path workspace) {
      return TriedWork.read(workspace, BIG).equals(TriedWork.page("old"));
    }

    @Override
    public boolean isDone(Path workspace) {
      return TriedWork.read(workspace, BIG).equals(TriedWork.page("new"));
    }
  }

  /** Text that is typed is kept beside what was kept before. */
  private static final class Keeping implements TriedWork {
    private static KeptTexts texts(Path workspace) {
      return new KeptTexts(
          new UserFolders(workspace, workspace, workspace), TriedWork.folders(workspace));
    }

    @Override
    public void prepare(Path workspace, Path elsewhere) throws IOException {
      NewWorkspace.in(workspace);
      texts(workspace).keep(kept("old"));
    }

    private static KeptText kept(String word) {
      return KeptText.of(BIG, Optional.empty(), Instant.EPOCH, new PageText(TriedWork.page(word)));
    }

    @Override
    public String attempt(Path workspace) throws IOException {
      texts(workspace).keep(kept("new"));
      return DONE;
    }

    private static boolean isOffered(Path workspace, String word) throws IOException {
      return texts(workspace).left(TriedWork.folders(workspace)).stream()
          .anyMatch(each -> each.kept().text().text().equals(TriedWork.page(word)));
    }

    @Override
    public boolean isAsBefore(Path workspace) throws IOException {
      return isOffered(workspace, "old");
    }

    @Override
    public boolean isDone(Path workspace) throws IOException {
      return isOffered(workspace, "old") && isOffered(workspace, "new");
    }
  }

  /** Of two pages that name the renamed one, only the small one fits on the disk. */
  private static final class Renames implements TriedWork {
    @Override
    public void prepare(Path workspace, Path elsewhere) throws IOException {
      new TestWorkspace(workspace);
      TriedWork.write(
          workspace, "articles/topics/a.md", "---\ntitle: A\n---\n[m](../procedures/mend.md)\n");
      TriedWork.write(workspace, BIG, TriedWork.page("[m](../procedures/mend.md)"));
    }

    @Override
    public String attempt(Path workspace) throws IOException {
      Library library = new LibraryReader(TriedWork.folders(workspace)).read();
      RenameOutcome outcome =
          new Renamer(TriedWork.folders(workspace)).rename(library, "mend", "mended");
      if (outcome instanceof RenameOutcome.Refused refused) {
        return refused.problems().toString();
      }
      return outcome instanceof RenameOutcome.Unfinished unfinished
          ? unfinished.problems().toString()
          : DONE;
    }

    private static boolean isCalled(Path workspace, String id) throws IOException {
      Library library = new LibraryReader(TriedWork.folders(workspace)).read();
      return library.problems().isEmpty()
          && library.linksTo(id).contains("big")
          && library.linksTo(id).contains("a")
          && !Files.exists(workspace.resolve(".renaming"));
    }

    @Override
    public boolean isAsBefore(Path workspace) throws IOException {
      return isCalled(workspace, "mend");
    }

    @Override
    public boolean isDone(Path workspace) throws IOException {
      return isCalled(workspace, "mended");
    }
  }

  private static final class Importing implements TriedWork {
    @Override
    public void prepare(Path workspace, Path elsewhere) throws IOException {
      NewWorkspace.in(workspace);
      TriedWork.write(workspace, BIG, TriedWork.page("old"));
    }

    @Override
    public String attempt(Path workspace) throws IOException {
      TreeMap<String, byte[]> files = new TreeMap<>();
      files.put("articles/topics/a.md", "---\ntitle: A\n---\n".getBytes(StandardCharsets.UTF_8));
      files.put(BIG, TriedWork.page("new").getBytes(StandardCharsets.UTF_8));
      Import bringing = new Import(TriedWork.folders(workspace), new Archive(files));
      bringing.apply(bringing.plan());
      return DONE;
    }

    @Override
    public boolean isAsBefore(Path workspace) throws IOException {
      return TriedWork.read(workspace, BIG).equals(TriedWork.page("old"))
          && TriedWork.read(workspace, "articles/topics/a.md").isEmpty()
          && new PendingImport(TriedWork.folders(workspace)).finish() == 0;
    }

    @Override
    public boolean isDone(Path workspace) {
      return TriedWork.read(workspace, BIG).equals(TriedWork.page("new"))
          && !TriedWork.read(workspace, "articles/topics/a.md").isEmpty();
    }
  }

  private static final class Recording implements TriedWork {
    @Override
    public void prepare(Path workspace, Path elsewhere) throws IOException {
      NewWorkspace.in(workspace);
      Beginning.begin(TriedWork.folders(workspace), ADA);
      TriedWork.write(workspace, BIG, PackedLarge.page());
    }

    @Override
    public String attempt(Path workspace) throws IOException {
      try (HistoryFolder place = HistoryFolder.of(TriedWork.folders(workspace)).orElseThrow()) {
        Recorder recorder = new Recorder(place);
        recorder.record(recorder.unrecorded(), "Write", ADA);
        return DONE;
      }
    }

    private static List<String> unrecorded(Path workspace) throws IOException {
      try (HistoryFolder place = HistoryFolder.of(TriedWork.folders(workspace)).orElseThrow()) {
        return new Recorder(place).unrecorded();
      }
    }

    @Override
    public boolean isAsBefore(Path workspace) throws IOException {
      return unrecorded(workspace).equals(List.of(BIG))
          && TriedWork.read(workspace, BIG).equals(PackedLarge.page());
    }

    @Override
    public boolean isDone(Path workspace) throws IOException {
      return unrecorded(workspace).isEmpty()
          && TriedWork.read(workspace, BIG).equals(PackedLarge.page());
    }
  }

  /** The page that is new must be found even while the index cannot be written. */
  private static final class Indexing implements TriedWork {
    @Override
    public void prepare(Path workspace, Path elsewhere) throws IOException {
      NewWorkspace.in(workspace);
      TriedWork.write(workspace, "articles/topics/a.md", "---\ntitle: Anchors\n---\n");
      update(workspace);
      TriedWork.write(workspace, BIG, PackedLarge.page());
    }

    private static UpdateReport update(Path workspace) throws IOException {
      Library library = new LibraryReader(TriedWork.folders(workspace)).read();
      try (SearchIndex index = SearchIndex.open(TriedWork.folders(workspace))) {
        UpdateReport report = index.update(library);
        if (index.find(SearchQuery.of("anchors")).hits().isEmpty()) {
          throw new IOException("the search finds nothing");
        }
        return report;
      }
    }

    @Override
    public String attempt(Path workspace) throws IOException {
      return update(workspace).inMemory().orElse(DONE);
    }

    @Override
    public boolean isAsBefore(Path workspace) throws IOException {
      return !TriedWork.read(workspace, BIG).isEmpty();
    }

    @Override
    public boolean isDone(Path workspace) throws IOException {
      return update(workspace).unchanged();
    }
  }
}
