package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Course;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.workings.QuantityWords;

/**
 * Cuts pages to a boat: what is for other boats is left out with the reason, amounts and times are
 * worked out, and cautions come first. A caution that a page names is never left out, whatever the
 * boat. Without a boat everything is shown, with notes which boats it is only for. Immutable; any
 * thread.
 */
public final class PageCutter {
  private final Library library;
  private final QuantityWords quantities;

  /** A cutter that writes metric units. */
  public PageCutter(Library library) {
    this(library, QuantityWords.METRIC);
  }

  /**
   * A cutter.
   *
   * @param library where cautions, materials and linked pages are looked up
   * @param quantities how quantities are written
   */
  public PageCutter(Library library, QuantityWords quantities) {
    this.library = library;
    this.quantities = quantities;
  }

  /** The page cut to a boat on a day, or, without a boat, the whole page. */
  public CutPage cut(Page<?> page, Optional<Fitting> fitting) {
    CutContext cutting = new CutContext(library, fitting, quantities);
    return new CutPage(
        page.id(),
        page.kind(),
        page.title(),
        page.head().summary(),
        fitting.map(known -> cutFor(known.boat())).orElse(""),
        parts(page, cutting));
  }

  private static List<Part> parts(Page<?> page, CutContext cutting) {
    Details details = page.details();
    if (details instanceof Procedure procedure) {
      return new ProcedureCutter(cutting).cut(typed(page, procedure));
    } else if (details instanceof Symptom symptom) {
      return new SymptomCutter(cutting).cut(typed(page, symptom));
    } else if (details instanceof Material material) {
      return new MaterialCutter(cutting).cut(typed(page, material));
    } else if (details instanceof Model model) {
      return new ModelCutter(cutting).cut(typed(page, model));
    } else if (details instanceof Course course) {
      return new CourseCutter(cutting).cut(typed(page, course));
    }
    return readingParts(page, details, cutting);
  }

  /** A caution or a topic: the danger first where there is one, and then the text. */
  private static List<Part> readingParts(Page<?> page, Details details, CutContext cutting) {
    PageParts parts = new PageParts(cutting);
    List<Part> cut = new ArrayList<>();
    Cautions.part(cutting.cautions().of(page)).ifPresent(cut::add);
    parts.fit(page).ifPresent(cut::add);
    BodyCutter.part("", new BodyCutter(cutting).cut(page)).ifPresent(cut::add);
    new FiguresPart(cutting).part(details.figures()).ifPresent(cut::add);
    new SumsPart(cutting).part(details.workings()).ifPresent(cut::add);
    parts.leftOut().ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    return cut;
  }

  private static <D extends Details> Page<D> typed(Page<?> page, D details) {
    return new Page<>(page.id(), page.path(), page.head(), details, page.body(), page.bodyLine());
  }

  /** Says which boat something is cut to. */
  public static String cutFor(Boat boat) {
    return "Cut to " + boat.name() + ": " + boat.particulars();
  }
}
