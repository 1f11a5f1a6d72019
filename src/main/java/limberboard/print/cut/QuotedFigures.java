package limberboard.print.cut;

import limberboard.library.value.FigureValue;

/**
 * The figures that a page's text quotes, for what stands beside them in other units. What they say
 * is in the text already: whoever reads the library put it there. Immutable.
 */
final class QuotedFigures {
  private final CutContext cutting;

  QuotedFigures(CutContext cutting) {
    this.cutting = cutting;
  }

  /** What stands behind a quoted figure; nothing behind any other link. */
  String beside(String page, String name, String written) {
    return cutting
        .library()
        .page(page)
        .filter(quoted -> quoted.details().figures().containsKey(name))
        .flatMap(quoted -> FigureValue.in(written))
        .map(cutting.quantities()::beside)
        .orElse("");
  }
}
