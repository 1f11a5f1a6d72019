package limberboard.library.check;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import limberboard.library.body.BodyScan;
import limberboard.library.body.FigureQuote;
import limberboard.library.file.FileNet;
import limberboard.library.header.HeaderQuotes;
import limberboard.library.header.Ids;
import limberboard.library.page.Page;
import limberboard.library.page.PageFigure;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.FigureValue;

/**
 * Figures that stand once and are quoted elsewhere: puts what they say now into the pages that
 * quote them, and tells quotations that say something else, lead to no figure or cannot stand for
 * it. A link whose name behind {@code #} is a figure of the page that it leads to is a quotation.
 */
public final class FigureCheck {
  private static final String KEY = "figure";
  private static final Pattern OWN_VALUE = Pattern.compile("/figures/[^/]*/value");

  private final LinkCheck links;

  /** A check of quotations between the pages that these links lead to. */
  public FigureCheck(LinkCheck links) {
    this.links = links;
  }

  /** The page as it is shown: with what the figures say now in the place of what it says. */
  public ParsedPage quoted(ParsedPage parsed) {
    return FileNet.read(parsed.path(), () -> shown(parsed), problem -> parsed);
  }

  private ParsedPage shown(ParsedPage parsed) {
    Function<FigureQuote, Optional<String>> now =
        quote ->
            quote.inHeading()
                ? Optional.empty()
                : figure(parsed, quote).flatMap(figure -> figure.inPlaceOf(quote.written()));
    PageQuotes quotes = parsed.quotes();
    boolean stale =
        quotes.body().stream().anyMatch(quote -> now.apply(quote).isPresent())
            || quotes.header().stream().anyMatch(found -> now.apply(found.quote()).isPresent());
    return stale && parsed.page().isPresent()
        ? quotes.again().page(now).map(parsed::with).orElse(parsed)
        : parsed;
  }

  private Optional<PageFigure> figure(ParsedPage from, FigureQuote quote) {
    return links
        .at(from, quote.target())
        .flatMap(ParsedPage::page)
        .map(page -> page.details().figures().get(quote.name()));
  }

  /** Reports what is wrong with a page's own figures, and with those that it quotes. */
  void check(ParsedPage parsed, Report report) {
    parsed.page().ifPresent(page -> own(page, parsed, report));
    for (FigureQuote quote : parsed.quotes().body()) {
      check(parsed, quote, (works, wrong, right) -> onLine(quote, works, wrong, right, report));
    }
    for (HeaderQuotes.Found found : parsed.quotes().header()) {
      String at = found.pointer();
      if (OWN_VALUE.matcher(at).matches()) {
        report.error(at, "quotes another figure", "write a number and a unit");
      } else {
        check(parsed, found.quote(), (works, wrong, right) -> at(at, works, wrong, right, report));
      }
    }
  }

  private static void onLine(
      FigureQuote quote, boolean works, String wrong, String right, Report report) {
    if (works) {
      report.warningOnLine(quote.line(), KEY, wrong, right);
    } else {
      report.errorOnLine(quote.line(), KEY, wrong, right);
    }
  }

  private static void at(String pointer, boolean works, String wrong, String right, Report report) {
    if (works) {
      report.warning(pointer, wrong, right);
    } else {
      report.error(pointer, wrong, right);
    }
  }

  /** Says what is wrong, and what would be right, at the place of a quotation. */
  private interface Said {
    void of(boolean works, String wrong, String right);

    default void error(String wrong, String right) {
      of(false, wrong, right);
    }

    /** What is shown rightly here all the same. */
    default void warning(String wrong, String right) {
      of(true, wrong, right);
    }
  }

  private static void own(Page<?> page, ParsedPage parsed, Report report) {
    page.details()
        .figures()
        .forEach(
            (name, figure) -> {
              String at = Report.pointer("/figures", name);
              if (!Ids.isId(name)) {
                report.error(
                    at, "is no name for a figure", "use lower-case letters, digits and hyphens");
              }
              if (figure.value().isEmpty() && !isTold(parsed, name)) {
                report.error(
                    at + "/value", "gives no figure", "write a number and a unit, such as 24 h");
              }
              if (figure.source().isBlank()) {
                report.error(
                    at + "/source",
                    "is missing",
                    "say where it comes from, or: common practice, no source");
              }
            });
  }

  /** Whether reading the page has said already what is wrong with a figure's value. */
  private static boolean isTold(ParsedPage parsed, String name) {
    String key = "figures." + name + ".value";
    return parsed.problems().stream().anyMatch(problem -> problem.key().equals(key));
  }

  private void check(ParsedPage from, FigureQuote quote, Said said) {
    Optional<ParsedPage> to = links.at(from, quote.target());
    Optional<Page<?>> page = to.flatMap(ParsedPage::page);
    if (page.isEmpty()) {
      return;
    }
    String file = file(page.get());
    PageFigure figure = page.get().details().figures().get(quote.name());
    if (figure == null) {
      missing(quote, page.get(), to.get().scan(), said);
    } else if (quote.inHeading()) {
      said.error("quotes a figure in a heading", "a heading is a name; quote it in the text below");
    } else if (figure.value().isPresent()) {
      compare(quote, figure.value().get(), file, said);
    }
  }

  private static String file(Page<?> page) {
    return page.id() + ".md";
  }

  private static void missing(FigureQuote quote, Page<?> page, BodyScan scan, Said said) {
    Map<String, PageFigure> figures = page.details().figures();
    boolean heading =
        scan.headings().stream().anyMatch(each -> anchor(each.text()).equals(quote.name()));
    if (!heading && (!figures.isEmpty() || FigureValue.in(quote.written()).isPresent())) {
      said.error(
          file(page) + " has no figure \"" + quote.name() + "\"",
          Nearest.advice(
              quote.name(),
              figures.keySet(),
              figures.isEmpty()
                  ? "write it there under figures, or take the link out"
                  : "it has " + String.join(", ", figures.keySet())));
    }
  }

  /** A heading as links name it. */
  private static String anchor(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-');
  }

  private static void compare(FigureQuote quote, FigureValue now, String file, Said said) {
    Optional<FigureValue> is = FigureValue.in(quote.written());
    String says = "says \"" + quote.written() + "\", and " + file + " says \"" + now.written();
    String write = "write " + now.written();
    if (is.isEmpty()) {
      said.error(says + "\" at " + quote.name() + ": that is no figure with a unit", write);
    } else if (!now.isLike(is.get())) {
      said.error(
          says + "\" at " + quote.name() + ", which measures something else",
          "quote another figure, or " + write);
    } else if (!now.equalTo(is.get())) {
      said.warning(says + "\" at " + quote.name(), write);
    }
  }
}
