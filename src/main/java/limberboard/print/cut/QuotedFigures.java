package limberboard.print.cut;

import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.value.FigureValue;

/**
 * The figures that a page's text quotes, for what stands beside them in other units. What they say
 * is in the text already: whoever reads the library put it there. Immutable.
 */
final class QuotedFigures {
  private static final String ENDING = ".md";

  private final CutContext cutting;
  private final Page<?> page;

  QuotedFigures(CutContext cutting, Page<?> page) {
    this.cutting = cutting;
    this.page = page;
  }

  /** What stands behind a quoted figure; nothing behind any other link. */
  String beside(String target, String written) {
    String[] parts = target.split("#", 2);
    return of(parts[0])
        .filter(quoted -> quoted.details().figures().containsKey(parts[1]))
        .flatMap(quoted -> FigureValue.in(written))
        .map(cutting.quantities()::beside)
        .orElse("");
  }

  private Optional<? extends Page<?>> of(String path) {
    if (path.isEmpty()) {
      return Optional.of(page);
    }
    String file = path.substring(path.lastIndexOf('/') + 1);
    return file.endsWith(ENDING)
        ? cutting.library().page(file.substring(0, file.length() - ENDING.length()))
        : Optional.empty();
  }
}
