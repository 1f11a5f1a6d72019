package limberboard.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import limberboard.library.check.FigureCheck;
import limberboard.library.check.FolderCheck;
import limberboard.library.check.FurtherCheck;
import limberboard.library.check.KnownNames;
import limberboard.library.check.LibraryCheck;
import limberboard.library.check.LinkCheck;
import limberboard.library.check.ParsedPage;
import limberboard.library.file.FileMemory;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderLinks;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.picture.PictureSafety;
import limberboard.library.problem.Problem;

/**
 * Reads the library again and again; only files that have changed are parsed anew. For one thread
 * at a time.
 */
public final class LibraryReader {
  private final WorkspaceFolders folders;
  private final List<FurtherCheck> further;
  private final PageParser parser = new PageParser();
  private final FileMemory<ParsedPage> pages = new FileMemory<>();
  private final FileMemory<Optional<String>> pictures = new FileMemory<>();
  private Library last = Library.empty();
  private Map<String, ParsedPage> lastParsed = Map.of();

  /** A reader of this workspace's library, with the library's own checks alone. */
  public LibraryReader(WorkspaceFolders folders) {
    this(folders, List.of());
  }

  /**
   * A reader of this workspace's library.
   *
   * @param further checks by others, run on every page
   */
  public LibraryReader(WorkspaceFolders folders, List<FurtherCheck> further) {
    this.folders = folders;
    this.further = List.copyOf(further);
  }

  /**
   * Reads the library.
   *
   * @return a snapshot with all pages that can be used and all problems; the same as the last time
   *     when nothing has changed
   * @throws IOException when the articles folder cannot be listed
   */
  public Library read() throws IOException {
    List<Problem> problems = new ArrayList<>();
    Map<Path, Kind> files = files(problems);
    Map<String, ParsedPage> parsed = parse(files, problems);
    LinkCheck links = new LinkCheck(folders, parsed.values(), this::pictureWrong);
    FigureCheck figures = new FigureCheck(links);
    parsed.replaceAll((id, page) -> figures.quoted(page));
    LibraryCheck check = new LibraryCheck(new KnownNames(parsed.values()), links, further);
    problems.addAll(check.check(parsed.values()));
    parsed.values().forEach(page -> problems.addAll(page.problems()));
    problems.sort(Comparator.comparing(Problem::file).thenComparingInt(Problem::line));
    List<Page<?>> usable = new ArrayList<>();
    Map<String, Set<String>> targets = new TreeMap<>();
    for (ParsedPage each : parsed.values()) {
      each.page()
          .ifPresent(
              page -> {
                usable.add(page);
                targets.put(each.id(), targets(each, page, links));
              });
    }
    pictures.forgetUnasked();
    Library read = new Library(usable, targets, problems);
    last = read.equals(last) ? last : read;
    lastParsed = parsed;
    return last;
  }

  /**
   * Reads a page from text that is being typed, against all other pages as they were last read.
   * What is made here stays as it is when files change; it may then be made anew.
   *
   * @param path of the page's file, relative to the workspace; it need not be there yet
   * @param kind what its folder holds
   */
  public TypingReader typing(String path, Kind kind) {
    return new TypingReader(folders, further, last, lastParsed.values(), path, kind);
  }

  private Optional<String> pictureWrong(Path picture) {
    return pictures.of(picture, PictureSafety::wrong);
  }

  static Set<String> targets(ParsedPage parsed, Page<?> page, LinkCheck links) {
    Set<String> targets = new HashSet<>(HeaderLinks.of(page));
    parsed
        .scan()
        .links()
        .forEach(link -> links.pageOf(parsed, link.text()).ifPresent(targets::add));
    parsed
        .quotes()
        .header()
        .forEach(found -> links.pageOf(parsed, found.quote().target()).ifPresent(targets::add));
    return targets;
  }

  /** All page files with the kind their folder stands for, in order of their paths. */
  private Map<Path, Kind> files(List<Problem> problems) throws IOException {
    if (!Files.isDirectory(folders.articles())) {
      throw new IOException(
          "there is no folder " + folders.articles() + "; a workspace keeps its pages there");
    }
    Map<Path, Kind> files = new LinkedHashMap<>();
    Map<Path, Boolean> held = new HashMap<>();
    FolderCheck check = new FolderCheck(folders);
    problems.addAll(check.strangers());
    for (Kind kind : Kind.values()) {
      for (Path file : check.listed(folders.articles().resolve(kind.folder()), problems)) {
        if (isPage(file, held, problems)) {
          files.put(file, kind);
        }
      }
    }
    return files;
  }

  private boolean isPage(Path file, Map<Path, Boolean> held, List<Problem> problems) {
    String name = file.getFileName().toString();
    if (name.startsWith(".")) {
      return false;
    }
    if (!name.endsWith(".md")) {
      FolderCheck.notAPage(folders.relative(file), name).ifPresent(problems::add);
      return false;
    }
    if (isHeld(file, held)) {
      return true;
    }
    problems.add(
        Problem.error(
            folders.relative(file),
            0,
            "",
            "is not a file within the workspace",
            "keep pages as ordinary files below articles/"));
    return false;
  }

  /**
   * Whether a file lies within the workspace; a file that is no link lies where its folder does.
   */
  private boolean isHeld(Path file, Map<Path, Boolean> held) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        ? held.computeIfAbsent(file.getParent(), folders::holds)
        : Files.isRegularFile(file) && folders.holds(file);
  }

  /** Parses the files; of two pages with the same id the first by path is kept. */
  private Map<String, ParsedPage> parse(Map<Path, Kind> files, List<Problem> problems) {
    Map<String, ParsedPage> parsed = new TreeMap<>();
    files.forEach(
        (file, kind) -> {
          String path = folders.relative(file);
          ParsedPage page = pages.of(file, changed -> parser.parse(changed, path, kind));
          ParsedPage other = parsed.putIfAbsent(page.id(), page);
          if (other != null) {
            problems.add(
                Problem.error(
                    path,
                    0,
                    "",
                    "has the same id as " + other.path(),
                    "rename one of them; ids are unique across all kinds"));
          }
        });
    pages.forgetUnasked();
    return parsed;
  }
}
