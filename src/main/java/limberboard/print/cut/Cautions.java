package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.page.Caution;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/** Cautions as parts of a page: in two lines before all others, in full after them, and by name. */
public final class Cautions {
  /** The title over the cautions in full. */
  public static final String IN_FULL = "The cautions in full";

  private static final String OF_THIS_WORK = "The cautions of this work";

  private Cautions() {}

  /** All of them in full, as the part that comes before all others; empty when there are none. */
  public static Optional<Part> part(List<WorkCaution> cautions) {
    return part(Part.Role.CAUTIONS, "", cautions.stream().<Block>map(Cautions::box).toList());
  }

  /**
   * The part that comes before all others: what may be an emergency in full, then the others in two
   * lines each, in their order; empty when there are none.
   */
  public static Optional<Part> inShort(List<WorkCaution> cautions) {
    List<Block> blocks = new ArrayList<>();
    cautions.stream().filter(WorkCaution::emergency).map(Cautions::box).forEach(blocks::add);
    cautions.stream()
        .filter(caution -> !caution.emergency())
        .map(Cautions::twoLines)
        .forEach(blocks::add);
    return part(Part.Role.CAUTIONS, "", blocks);
  }

  /** The part that comes after all others: in full what {@link #inShort} has in two lines. */
  public static Optional<Part> inFull(List<WorkCaution> cautions) {
    return part(
        Part.Role.CAUTIONS_IN_FULL,
        IN_FULL,
        WorkCautions.toTellInFull(cautions).stream().<Block>map(Cautions::box).toList());
  }

  /**
   * A page on which the cautions that have been read are folded to their names, in one line after
   * the others.
   *
   * @param isRead whether one that stands in two lines has been read
   */
  public static CutPage folded(CutPage page, Predicate<Block.ShortCaution> isRead) {
    return new CutPage(
        page.id(),
        page.kind(),
        page.label(),
        page.title(),
        page.summary(),
        page.cutFor(),
        page.parts().stream()
            .map(part -> part.role() == Part.Role.CAUTIONS ? folded(part, isRead) : part)
            .toList());
  }

  private static Part folded(Part part, Predicate<Block.ShortCaution> isRead) {
    List<Block> blocks = new ArrayList<>();
    List<Inline.CautionName> names = new ArrayList<>();
    boolean more = false;
    for (Block block : part.blocks()) {
      if (block instanceof Block.ShortCaution caution && isRead.test(caution)) {
        names.add(new Inline.CautionName(caution.id(), caution.title()));
      } else {
        blocks.add(block);
        more |= block instanceof Block.ShortCaution;
      }
    }
    blocks.add(new Block.FoldedCautions(names, more));
    return new Part(part.role(), part.title(), blocks);
  }

  /**
   * The part at the end of a list: each caution in two lines, with the lines of the list that it is
   * for.
   *
   * @param at the lines that a caution is for, in words
   * @param whole where the whole text of each stands
   */
  public static Optional<Part> atEnd(
      List<WorkCaution> cautions, Function<WorkCaution, String> at, String whole) {
    if (cautions.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>(List.of(Block.Paragraph.of(whole)));
    for (WorkCaution caution : cautions) {
      blocks.add(
          new Block.ShortCaution(
              caution.id(), caution.title(), caution.danger(), caution.rule(), at.apply(caution)));
    }
    return part(Part.Role.CAUTIONS_IN_FULL, OF_THIS_WORK, blocks);
  }

  /** The same with the whole text of each in place of its two lines. */
  public static Optional<Part> allAtEnd(
      List<WorkCaution> cautions, Function<WorkCaution, String> at) {
    return part(
        Part.Role.CAUTIONS_IN_FULL,
        OF_THIS_WORK,
        cautions.stream()
            .map(caution -> caution.carriedBy(at.apply(caution)))
            .<Block>map(Cautions::box)
            .toList());
  }

  /** The names of cautions as a fact beside a line of a list; empty when there are none. */
  public static Optional<Block.Fact> beside(List<WorkCaution> cautions) {
    return titles(cautions).map(names -> Block.Fact.of("Caution", names));
  }

  private static Optional<Part> part(Part.Role role, String title, List<Block> blocks) {
    return blocks.isEmpty() ? Optional.empty() : Optional.of(new Part(role, title, blocks));
  }

  /** One in full. */
  public static Block.CautionBox box(WorkCaution caution) {
    Caution details = caution.page().details();
    return new Block.CautionBox(
        caution.id(),
        caution.title(),
        details.danger(),
        details.act(),
        details.seek(),
        caution.because(),
        caution.question());
  }

  /** One in two lines. */
  public static Block.ShortCaution twoLines(WorkCaution caution) {
    return new Block.ShortCaution(
        caution.id(), caution.title(), caution.danger(), caution.rule(), "");
  }

  /** Their names, each for the place where it bites. */
  static List<Inline> names(List<WorkCaution> cautions) {
    return cautions.stream()
        .<Inline>map(caution -> new Inline.CautionName(caution.id(), caution.title()))
        .toList();
  }

  /** Their titles in one line; empty when there are none. */
  public static Optional<String> titles(List<WorkCaution> cautions) {
    return cautions.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join("; ", cautions.stream().map(WorkCaution::title).toList()));
  }
}
