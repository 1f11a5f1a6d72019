package limberboard.library;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.library.check.FigureCheck;
import limberboard.library.check.FurtherCheck;
import limberboard.library.check.KnownNames;
import limberboard.library.check.LibraryCheck;
import limberboard.library.check.LinkCheck;
import limberboard.library.check.ParsedPage;
import limberboard.library.file.FileMemory;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.picture.PictureSafety;
import limberboard.library.problem.Problem;

/**
 * Reads one page from text that is being typed, again and again. The other pages are gone through
 * once, when this is made; a reading parses and checks this page alone. For one thread at a time.
 */
public final class TypingReader {
  private final List<FurtherCheck> further;
  private final Library library;
  private final String path;
  private final Kind kind;
  private final PageParser parser = new PageParser();
  private final KnownNames others;
  private final List<ParsedPage> procedures = new ArrayList<>();
  private final LinkCheck links;
  private final FigureCheck figures;
  private final FileMemory<Optional<String>> pictures = new FileMemory<>();

  /**
   * What came of reading.
   *
   * @param page the page; empty while something that it must have is missing or wrong
   * @param problems what is wrong with it, by line
   * @param library all pages with this one as it was typed, or as it was before while there is none
   */
  public record Typed(Optional<Page<?>> page, List<Problem> problems, Library library) {
    /** Copies the list. */
    public Typed {
      problems = List.copyOf(problems);
    }
  }

  TypingReader(
      WorkspaceFolders folders,
      List<FurtherCheck> further,
      Library library,
      Collection<ParsedPage> pages,
      String path,
      Kind kind) {
    this.further = further;
    this.library = library;
    this.path = path;
    this.kind = kind;
    List<ParsedPage> rest = pages.stream().filter(page -> !page.path().equals(path)).toList();
    this.others = new KnownNames(rest);
    rest.stream().filter(TypingReader::hasOrder).forEach(procedures::add);
    List<ParsedPage> all = new ArrayList<>(rest);
    all.add(parser.parse(path, kind, ""));
    this.links = new LinkCheck(folders, all, this::pictureWrong);
    this.figures = new FigureCheck(links);
  }

  private static boolean hasOrder(ParsedPage page) {
    return page.page()
        .flatMap(each -> each.as(Procedure.class))
        .map(Page::details)
        .filter(work -> work.isRound() || !work.before().isEmpty())
        .isPresent();
  }

  private Optional<String> pictureWrong(Path picture) {
    return pictures.of(picture, PictureSafety::wrong);
  }

  /**
   * Reads the page.
   *
   * @param text its whole text, with line ends {@code \n} and without a byte-order mark
   */
  public Typed read(String text) {
    ParsedPage parsed = figures.quoted(parser.parse(path, kind, text));
    LibraryCheck check = new LibraryCheck(others.with(parsed), links, further);
    List<ParsedPage> ordered = hasOrder(parsed) ? procedures : List.of();
    List<Problem> problems = new ArrayList<>(check.check(parsed, ordered));
    problems.addAll(parsed.problems());
    taken(parsed.id()).ifPresent(problems::add);
    problems.sort(Comparator.comparingInt(Problem::line));
    Library now =
        parsed
            .page()
            .map(
                page -> {
                  Set<String> targets = LibraryReader.targets(parsed, page, links);
                  return library.with(page, targets, problems);
                })
            .orElse(library);
    return new Typed(parsed.page(), problems, now);
  }

  private Optional<Problem> taken(String id) {
    return library
        .page(id)
        .filter(page -> !page.path().equals(path))
        .map(
            page ->
                Problem.error(
                    path,
                    0,
                    "",
                    "has the same id as " + page.path(),
                    "rename one of them; ids are unique across all kinds"));
  }
}
