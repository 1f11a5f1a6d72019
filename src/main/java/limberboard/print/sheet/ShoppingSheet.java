package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.CutContext;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.upkeep.shopping.MixWarning;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.words.Sentences;
import limberboard.workings.QuantityWords;

/**
 * A shopping list as a sheet that any output can render: what to get by shelf with boxes to tick
 * and the cautions of each by name, what must not be mixed, and the cautions in two lines at the
 * end. Immutable; any thread.
 */
public final class ShoppingSheet {
  private static final String IN_FULL =
      "The page of the material and of the work has the whole of each. Read it before you open a"
          + " tin or begin. Local codes and licensed trades come before anything here.";

  private final Library library;

  /** Sheets whose cautions and pages are looked up in this library. */
  public ShoppingSheet(Library library) {
    this.library = library;
  }

  /** The sheet for a list, for a screen. */
  public CutPage of(ShoppingList list) {
    return of(list, ShoppingFor.work(list));
  }

  /** The sheet for a list that is for something, for a screen. */
  public CutPage of(ShoppingList list, ShoppingFor purpose) {
    return sheet(list, purpose, false);
  }

  /**
   * The sheet for paper, which is carried about in a shop and therefore set close; it says the
   * same.
   */
  public CutPage onPaper(ShoppingList list) {
    return onPaper(list, ShoppingFor.work(list));
  }

  /** The sheet for paper, of a list that is for something. */
  public CutPage onPaper(ShoppingList list, ShoppingFor purpose) {
    return sheet(list, purpose, true);
  }

  private CutPage sheet(ShoppingList list, ShoppingFor purpose, boolean close) {
    CutContext cutting = new CutContext(library, Optional.of(list.fitting()), QuantityWords.METRIC);
    ShoppingTables tables = new ShoppingTables(list, cutting, close);
    List<Part> parts = new ArrayList<>();
    parts.add(facts(list, purpose));
    parts.add(tables.toGet());
    tables.afterLook().ifPresent(parts::add);
    tables.otherRopes().ifPresent(parts::add);
    mixing(list).ifPresent(parts::add);
    tables.there().ifPresent(parts::add);
    tables.substitutes().ifPresent(parts::add);
    tables.tools().ifPresent(parts::add);
    leftOut(list).ifPresent(parts::add);
    Cautions.atEnd(list.cautions(), ShoppingSheet::because, IN_FULL).ifPresent(parts::add);
    return new CutPage(
        "shopping-list",
        Kind.MATERIAL,
        CutPage.LIST,
        purpose.title(),
        purpose.sum(),
        PageCutter.cutFor(list.fitting().boat()),
        parts);
  }

  private static String because(WorkCaution caution) {
    return caution.because().isEmpty() ? "" : "for " + Sentences.lowered(caution.because());
  }

  private static Optional<Part> mixing(ShoppingList list) {
    List<List<Inline>> lines = list.warnings().stream().map(ShoppingSheet::warning).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.NOTICE, "What must not be mixed", List.of(Block.Items.dotted(lines))));
  }

  private static List<Inline> warning(MixWarning warning) {
    String grade = warning.grade() == MixWarning.Grade.NEVER ? "Never: " : "Take care: ";
    return List.of(
        new Inline.Strong(Inline.text(grade + warning.what() + ".")),
        new Inline.Text(
            " " + Sentences.capital(warning.why()) + ". Source: " + warning.source() + "."));
  }

  private static Part facts(ShoppingList list, ShoppingFor purpose) {
    Boat boat = list.fitting().boat();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(
        Block.Fact.of(
            "Boat",
            boat.name()
                + ", "
                + boat.model().title()
                + ", "
                + boat.use().spoken()
                + ", in "
                + boat.water().spoken()
                + " water"
                + (purpose.when().isEmpty() ? "" : "; " + purpose.when())));
    if (!list.missing().isEmpty()) {
      facts.add(Block.Fact.of("Pages missing", String.join(", ", list.missing())));
    }
    return new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts)));
  }

  private static Optional<Part> leftOut(ShoppingList list) {
    List<List<Inline>> lines =
        list.leftOut().stream()
            .map(left -> left.of().title() + ": " + left.why())
            .distinct()
            .map(Inline::text)
            .toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.LEFT_OUT,
                "What nothing is bought for",
                List.of(Block.Items.dotted(lines))));
  }
}
