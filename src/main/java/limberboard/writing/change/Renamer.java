package limberboard.writing.change;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.FileBytes;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.Ids;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.writing.change.NamingFiles.NamingFile;

/**
 * Renames pages, with every place that names them, in one step: a program that is killed on the way
 * leaves a note by which the next opening goes on. Files are changed one after another under their
 * locks, from what they hold at that moment, so others may write meanwhile.
 *
 * @param folders the workspace
 */
public record Renamer(WorkspaceFolders folders) {
  private static final long ROOM = 1_000_000;

  /**
   * Renames a page.
   *
   * @param library the pages, as they were last read
   * @param id the page's id
   * @param to its new id
   */
  public RenameOutcome rename(Library library, String id, String to) {
    List<Problem> left = finish();
    if (!left.isEmpty()) {
      return new RenameOutcome.Refused(left);
    }
    Optional<Problem> bad = bad(library, id, to);
    if (bad.isPresent()) {
      return new RenameOutcome.Refused(List.of(bad.get()));
    }
    Renaming renaming = new Renaming(library.page(id).orElseThrow().kind(), id, to);
    try {
      Map<NamingFile, Integer> places = places(renaming);
      List<Problem> locked = unwritable(renaming, places);
      if (!locked.isEmpty()) {
        return new RenameOutcome.Refused(locked);
      }
      Optional<Problem> busy = journal().write(renaming, Optional.empty());
      if (busy.isPresent()) {
        return new RenameOutcome.Refused(List.of(busy.get()));
      }
      return done(renaming, places);
    } catch (IOException e) {
      return new RenameOutcome.Refused(List.of(FileTrouble.notWritten(renaming.fromPath(), e)));
    }
  }

  private RenameOutcome done(Renaming renaming, Map<NamingFile, Integer> places) {
    List<Problem> problems = apply(renaming);
    if (problems.isEmpty()) {
      Map<String, Integer> byFile = new LinkedHashMap<>();
      places.forEach((file, count) -> byFile.put(folders.relative(file.path()), count));
      return new RenameOutcome.Renamed(renaming, byFile);
    }
    Renaming back = renaming.back();
    if (journal().write(back, Optional.of(renaming)).isEmpty() && apply(back).isEmpty()) {
      return new RenameOutcome.Refused(problems);
    }
    return new RenameOutcome.Unfinished(renaming, problems);
  }

  /**
   * Goes on with a renaming that was cut short, if there is one. To be called whenever a workspace
   * is opened, before it is read.
   *
   * @return why it cannot be brought to its end; nothing when there is none or it is done
   */
  public List<Problem> finish() {
    if (!journal().isThere()) {
      return List.of();
    }
    Optional<Renaming> cut = journal().read();
    if (cut.isEmpty()) {
      return journal().isThere()
          ? List.of(
              Problem.error(
                  ".renaming",
                  0,
                  "",
                  "does not say which page is being renamed",
                  "delete it, and look with validate for links that lead nowhere"))
          : List.of();
    }
    return apply(cut.get());
  }

  private RenameJournal journal() {
    return new RenameJournal(folders);
  }

  /**
   * Why a page cannot get an id, if it cannot: there is no such page, the id is none, or something
   * has it.
   *
   * @param library the pages, as they were last read
   * @param id the page's id
   * @param to its new id
   */
  public Optional<Problem> bad(Library library, String id, String to) {
    if (library.page(id).isEmpty()) {
      return Optional.of(
          Problem.error(id, 0, "", "is no page", "name a page by its file's name without .md"));
    }
    Page<?> page = library.page(id).get();
    if (!Ids.isId(to)) {
      return Optional.of(
          Problem.error(
              page.path(),
              0,
              "",
              "\"" + to + "\" is no page id",
              "use lower-case letters, digits and hyphens"));
    }
    for (Kind kind : Kind.values()) {
      String path = new Renaming(kind, to, to).toPath();
      if (FileBytes.isThere(folders.root().resolve(path))) {
        return Optional.of(
            Problem.error(
                page.path(),
                0,
                "",
                "cannot be called \"" + to + "\": there is " + path,
                "choose another id; ids are unique across all kinds"));
      }
    }
    return new Renaming(page.kind(), id, to).fromPath().equals(page.path())
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                page.path(), 0, "", "does not lie in the folder of its kind", "move it there"));
  }

  /** The files that name the page, with how often each does. */
  private Map<NamingFile, Integer> places(Renaming renaming) throws IOException {
    PageNaming naming = new PageNaming(folders, renaming);
    Map<NamingFile, Integer> places = new LinkedHashMap<>();
    for (NamingFile file : new NamingFiles(folders).all()) {
      int count = naming.places(file, PageLinks.text(file)).size();
      if (count > 0) {
        places.put(file, count);
      }
    }
    return places;
  }

  private List<Problem> unwritable(Renaming renaming, Map<NamingFile, Integer> places)
      throws IOException {
    List<Path> files = new ArrayList<>(places.keySet().stream().map(NamingFile::path).toList());
    files.add(folders.root().resolve(renaming.fromPath()));
    List<Problem> problems = new ArrayList<>();
    long most = ROOM;
    for (Path file : files) {
      most = Math.max(most, 2 * Files.size(file) + ROOM);
      if (!Files.isWritable(file) || !Files.isWritable(file.toRealPath().getParent())) {
        problems.add(
            Problem.error(
                folders.relative(file),
                0,
                "",
                "may not be written, and it would have to be",
                "change the permissions of the file and its folder; nothing was changed"));
      }
    }
    if (Files.getFileStore(folders.root()).getUsableSpace() < most) {
      problems.add(
          Problem.error(
              renaming.fromPath(),
              0,
              "",
              "cannot be renamed: the disk is full",
              "make room and try again; nothing was changed"));
    }
    return problems;
  }

  /** Renames what is not renamed yet; what went wrong. */
  private List<Problem> apply(Renaming renaming) {
    PageNaming naming = new PageNaming(folders, renaming);
    List<Problem> problems = new ArrayList<>();
    try {
      for (NamingFile file : new NamingFiles(folders).all()) {
        if (!naming.places(file, PageLinks.text(file)).isEmpty()) {
          change(naming, file).ifPresent(problems::add);
        }
      }
      if (problems.isEmpty()) {
        SafeFiles.rename(
            folders.root().resolve(renaming.fromPath()), folders.root().resolve(renaming.toPath()));
      }
    } catch (FileAlreadyExistsException e) {
      journal().end(renaming);
      problems.add(
          Problem.error(
              renaming.toPath(),
              0,
              "",
              "is there, and so is " + renaming.fromPath(),
              "look which of the two is right, and delete the other"));
    } catch (IOException e) {
      problems.add(FileTrouble.notWritten(renaming.fromPath(), e));
    }
    if (problems.isEmpty()) {
      journal().end(renaming).ifPresent(problems::add);
    }
    return problems;
  }

  private Optional<Problem> change(PageNaming naming, NamingFile file) {
    return new SharedTextFile(folders, file.path(), file.largest())
        .change(
            now ->
                now.isEmpty()
                    ? Rewrite.<Optional<Problem>>leave(Optional.empty())
                    : Rewrite.write(now.map(text -> naming.renamed(file, text)), Optional.empty()),
            Optional::of);
  }
}
