package limberboard.library.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import limberboard.library.body.FigureQuote;
import limberboard.library.header.HeaderQuotes;
import limberboard.library.page.Page;

/**
 * The links of a page that may quote figures.
 *
 * @param body those of its text; their lines are the file's, from 1
 * @param header those of its header
 * @param again makes the page with other words in their places
 */
public record PageQuotes(List<FigureQuote> body, List<HeaderQuotes.Found> header, Again again) {
  /** A page that quotes nothing. */
  public static final PageQuotes NONE =
      new PageQuotes(List.of(), List.of(), words -> Optional.empty());

  /** Copies the lists. */
  public PageQuotes {
    body = List.copyOf(body);
    header = List.copyOf(header);
  }

  /** Makes a page with other words. */
  public interface Again {
    /**
     * The page as it would be.
     *
     * @param words what is to stand in the place of a quotation; empty for what stays as written
     */
    Optional<Page<?>> page(Function<FigureQuote, Optional<String>> words);
  }

  /** Whether there are none. */
  boolean isEmpty() {
    return body.isEmpty() && header.isEmpty();
  }
}
