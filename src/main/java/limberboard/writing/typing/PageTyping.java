package limberboard.writing.typing;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.TypingReader;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;
import limberboard.writing.PageText;

/**
 * What a page's text says and what is wrong with it before it is saved, by the reader and the
 * checks that {@code validate} uses. Each reading looks at this page alone; the others were gone
 * through when the {@link TypingReader} was made. For one thread at a time, not the event thread.
 */
public final class PageTyping {
  private final TypingReader reader;

  /** Reads with this reader. */
  public PageTyping(TypingReader reader) {
    this.reader = reader;
  }

  /**
   * A text that was read.
   *
   * @param page the page; empty while something that it must have is missing or wrong
   * @param problems what is wrong, with the letters it is about
   * @param library all pages with this one as it was typed
   */
  public record Read(Optional<Page<?>> page, List<MarkedProblem> problems, Library library) {
    /** Copies the list. */
    public Read {
      problems = List.copyOf(problems);
    }

    /** The page as it will be shown for a boat, or for none; empty while there is no page. */
    public Optional<CutPage> cut(Optional<Fitting> fitting) {
      return page.map(each -> new PageCutter(library).cut(each, fitting));
    }
  }

  /** Reads a text. */
  public Read read(PageText text) {
    String plain = text.plain();
    TypingReader.Typed typed = reader.read(plain);
    return new Read(typed.page(), MarkedProblem.in(plain, typed.problems()), typed.library());
  }
}
