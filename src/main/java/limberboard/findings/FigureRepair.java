package limberboard.findings;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.Library;
import limberboard.library.body.FigureQuote;
import limberboard.library.body.Markdown;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderText;
import limberboard.library.page.Page;
import limberboard.library.page.PageFigure;
import limberboard.library.problem.Problem;
import limberboard.words.CountWords;

/**
 * The one step that writes what a figure says now on all pages that quote it and say another. Where
 * a page says something that the figure cannot stand for, it is left alone.
 *
 * @param page the id of the page that the figure stands on
 * @param name the figure's name there
 * @param figure the figure
 * @param files the pages that may quote it, relative to the workspace, in order
 */
public record FigureRepair(String page, String name, PageFigure figure, List<String> files)
    implements Repair {
  private static final Pattern SAYS =
      Pattern.compile("says \".*\", and (\\S+)\\.md says \".*\" at (\\S+)");

  /** Copies the list. */
  public FigureRepair {
    files = List.copyOf(files);
  }

  /** The repair of a problem; empty where it is no quotation that says something else. */
  public static Optional<FigureRepair> of(Problem problem, Library library) {
    Matcher says = SAYS.matcher(problem.wrong());
    return says.matches()
        ? library.page(says.group(1)).flatMap(page -> of(page, says.group(2), library))
        : Optional.empty();
  }

  private static Optional<FigureRepair> of(Page<?> page, String name, Library library) {
    Set<String> files = new TreeSet<>();
    files.add(page.path());
    library
        .linksTo(page.id())
        .forEach(id -> library.page(id).ifPresent(from -> files.add(from.path())));
    return Optional.ofNullable(page.details().figures().get(name))
        .filter(figure -> figure.value().isPresent())
        .map(figure -> new FigureRepair(page.id(), name, figure, List.copyOf(files)));
  }

  /** The repairs of all problems of a library, each once. */
  public static List<FigureRepair> all(Library library) {
    Set<FigureRepair> all = new LinkedHashSet<>();
    library.problems().forEach(problem -> of(problem, library).ifPresent(all::add));
    return List.copyOf(all);
  }

  @Override
  public String words() {
    return "“"
        + figure.value().orElseThrow().written()
        + "” now stands wherever “"
        + name
        + "” of "
        + page
        + " is quoted.";
  }

  /**
   * Makes it, file by file.
   *
   * @return why a file could not be written; the others are
   */
  @Override
  public Optional<Problem> make(WorkspaceFolders folders) {
    List<Problem> wrong = new ArrayList<>();
    for (String file : files) {
      new SharedTextFile(folders, folders.root().resolve(file), TextFile.LARGEST)
          .edit(
              text -> Optional.of(mended(file, text)).filter(mended -> !mended.equals(text)),
              Optional::empty)
          .ifPresent(wrong::add);
    }
    return wrong.isEmpty()
        ? Optional.empty()
        : Optional.of(wrong.size() == 1 ? wrong.get(0) : together(wrong));
  }

  private static Problem together(List<Problem> wrong) {
    Problem first = wrong.get(0);
    return Problem.error(
        first.file(),
        first.line(),
        first.key(),
        first.wrong() + ", and " + CountWords.of(wrong.size() - 1, "page") + " more",
        first.right());
  }

  /** A page's whole text with what the figure says now; all else to the letter. */
  private String mended(String file, String text) {
    Optional<HeaderText> parts = HeaderText.part(text);
    if (parts.isEmpty()) {
      return text;
    }
    int body = text.length() - parts.get().body().length();
    Function<FigureQuote, Optional<String>> now =
        quote -> isOfThis(file, quote) ? figure.inPlaceOf(quote.written()) : Optional.empty();
    String header = text.substring(0, body);
    String below = text.substring(body);
    return FigureQuote.rewritten(header, FigureQuote.inText(header), now)
        + FigureQuote.rewritten(below, FigureQuote.inBody(Markdown.parse(below), below), now);
  }

  /**
   * Whether a quotation is of this figure; ids of pages are unique, whatever folder they lie in.
   */
  private boolean isOfThis(String file, FigureQuote quote) {
    String path = quote.target().substring(0, quote.target().indexOf('#'));
    String to = path.isEmpty() ? file : path;
    return quote.name().equals(name)
        && !quote.inHeading()
        && to.substring(to.lastIndexOf('/') + 1).equals(page + ".md");
  }
}
