package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.TreeCut;

/**
 * The card for a locker's lid: of a diagnostic tree, as much as goes on one sheet, with the
 * cautions of what it shows, how much of what happens it covers, and where to go on for the rest.
 * Stateless.
 */
public final class TreeCard {
  /** The width of a card's drawing, in CSS pixels of 1/96 inch. */
  public static final double WIDTH = 714;

  /** The height of a card's drawing, in CSS pixels of 1/96 inch. */
  public static final double HEIGHT = 1034;

  private static final String TOO_LONG =
      "There is no card: the cautions and the first step alone take more than one sheet. Print the"
          + " whole tree.";

  /** As much of a tree as goes on one sheet, the best first. */
  public TreeCut cut(DiagnosticTree tree) {
    TreeCut root = TreeCut.root(tree);
    return TreeCut.bestFirst(
        tree, fork -> CardColumns.height(root, fork), cut -> new CardColumns(cut).fits());
  }

  /** Whether a cut goes on one sheet. */
  public boolean fits(TreeCut cut) {
    return new CardColumns(cut).fits();
  }

  /** The drawing that is the card, as SVG of {@link #WIDTH} by {@link #HEIGHT}. */
  public String drawing(TreeCut cut) {
    return new CardColumns(cut).drawn();
  }

  /** One sheet; where not even the first step goes on one, a page that says so. */
  public CutPage of(TreeCut cut) {
    CardColumns columns = new CardColumns(cut);
    if (!columns.fits()) {
      return page(
          cut,
          CutPage.LIST,
          Stream.of(
                  Cautions.part(cut.cautions()).stream(),
                  Stream.of(
                      new Part(
                          Part.Role.NOTICE, "", List.of(new Block.Notice(Inline.text(TOO_LONG))))))
              .flatMap(parts -> parts)
              .toList());
    }
    Block drawing = new Block.Drawing(columns.drawn(), new CardWords(cut).alt(), true);
    return page(cut, CutPage.CARD, List.of(new Part(Part.Role.CHECKS, "", List.of(drawing))));
  }

  /**
   * A card for a terminal.
   *
   * @param width in characters
   */
  public String text(TreeCut cut, int width) {
    CardWords words = new CardWords(cut);
    List<Part> parts = new ArrayList<>();
    Cautions.inShort(cut.cautions()).ifPresent(parts::add);
    List<List<Inline>> reading =
        Stream.concat(
                words.found().stream().map(found -> "Found already: " + found),
                Stream.of(words.share(), CardWords.how(), words.rest()))
            .map(Inline::text)
            .toList();
    parts.add(new Part(Part.Role.FACTS, "How to read it", List.of(Block.Items.dotted(reading))));
    List<Block> steps = new ArrayList<>();
    words.shown().forEach(fork -> steps.addAll(step(words, fork)));
    parts.add(new Part(Part.Role.CHECKS, "The steps", steps));
    return new PlainText().render(page(cut, CutPage.CARD, parts), width);
  }

  private static List<Block> step(CardWords words, Fork fork) {
    List<List<Inline>> lines = new ArrayList<>();
    CardWords.cautions(fork).map(Inline::text).ifPresent(lines::add);
    words.facts(fork).stream().map(Inline::text).forEach(lines::add);
    words.ways(fork).stream().map(Inline::text).forEach(lines::add);
    return List.of(
        new Block.Paragraph(List.of(new Inline.Strong(Inline.text(CardWords.step(fork))))),
        Block.Items.dotted(lines));
  }

  private static CutPage page(TreeCut cut, String label, List<Part> parts) {
    return new CutPage(
        cut.tree().from().fault().page().id(),
        cut.tree().from().fault().page().kind(),
        label,
        cut.tree().from().fault().page().title(),
        "A card of what happens most, for a locker's lid",
        PageCutter.cutFor(cut.tree().from().fault().fitting().boat()),
        parts);
  }
}
