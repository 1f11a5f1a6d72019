package limberboard.desktop.write.complete;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.PageFigure;
import limberboard.writing.PageText;
import limberboard.writing.PageText.Stretch;

/**
 * Finds what can stand at the caret: in the header keys, names and words by the page's kind; in the
 * text links to pages, and figures that can be quoted.
 *
 * @param library the pages
 * @param kind of the page that is written
 * @param path of its file, relative to the workspace
 */
public record CompletionFinder(Library library, Kind kind, String path) {
  private static final int MOST = 200;
  private static final Pattern TARGET = Pattern.compile("\\]\\(([^)\\s]*)$");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}-]*$");

  /**
   * What can stand at a place.
   *
   * @param plain the text, with line ends {@code \n}
   * @param caret the place in it
   */
  public Completion at(String plain, int caret) {
    Optional<Stretch> header = new PageText(plain).header();
    if (header.filter(at -> at.from() <= caret && caret <= at.to()).isPresent()) {
      KeyPath where = KeyPath.of(plain.substring(header.get().from(), caret));
      return fitting(caret, where.token(), new HeaderWords(kind, library).at(where).stream());
    }
    String before = plain.substring(0, caret);
    Matcher target = TARGET.matcher(before);
    if (target.find()) {
      return fitting(
          caret,
          target.group(1),
          Stream.concat(
              pages().map(page -> new Candidate(link(page), page.title(), page.kind().word())),
              figures(false)));
    }
    Matcher word = WORD.matcher(before);
    return fitting(
        caret,
        word.find() ? word.group() : "",
        Stream.concat(
            pages().map(page -> new Candidate(whole(page), page.title(), page.kind().word())),
            figures(true)));
  }

  /** The figures of all pages: where a link to each leads, or whole links that quote them. */
  private Stream<Candidate> figures(boolean whole) {
    return library.pages().stream()
        .flatMap(
            page ->
                page.details().figures().entrySet().stream()
                    .filter(each -> each.getValue().value().isPresent())
                    .map(each -> figure(page, each.getKey(), each.getValue(), whole)));
  }

  private Candidate figure(Page<?> page, String name, PageFigure figure, boolean whole) {
    String target = (page.path().equals(path) ? "" : link(page)) + "#" + name;
    String value = figure.value().orElseThrow().written();
    String title = page.title() + ": " + (figure.title().isBlank() ? name : figure.title());
    return new Candidate(whole ? "[" + value + "](" + target + ")" : target, title, value);
  }

  private Stream<Page<?>> pages() {
    return library.pages().stream().filter(page -> !page.path().equals(path));
  }

  /** A whole link to a page, with its title as its words. */
  public String whole(Page<?> page) {
    return "[" + page.title().replaceAll("([\\[\\]\\\\])", "\\\\$1") + "](" + link(page) + ")";
  }

  /** Where a link to a page leads, as it is written in the page that is written. */
  String link(Page<?> page) {
    String[] from = path.split("/");
    String[] to = page.path().split("/");
    int same = 0;
    while (same < from.length - 1 && same < to.length - 1 && from[same].equals(to[same])) {
      same++;
    }
    return "../".repeat(from.length - 1 - same)
        + String.join("/", List.of(to).subList(same, to.length));
  }

  private static Completion fitting(int caret, String token, Stream<Candidate> all) {
    String typed = token.toLowerCase(Locale.ROOT).replaceAll("^(\\.\\./)+", "");
    List<Candidate> fitting =
        all.filter(each -> rank(each, typed) < 3)
            .sorted(Comparator.comparingInt(each -> rank(each, typed)))
            .limit(MOST)
            .toList();
    return new Completion(caret - token.length(), caret, fitting);
  }

  /** How well it fits what was typed: 0 begins with it, 1 has a word of it, 2 has it, 3 not. */
  private static int rank(Candidate candidate, String typed) {
    String title = candidate.title().toLowerCase(Locale.ROOT);
    String letters = candidate.letters().toLowerCase(Locale.ROOT);
    if (title.startsWith(typed) || letters.startsWith(typed)) {
      return 0;
    }
    if (title.contains(" " + typed) || letters.contains("/" + typed)) {
      return 1;
    }
    return title.contains(typed) || letters.contains(typed) || candidate.detail().contains(typed)
        ? 2
        : 3;
  }
}
