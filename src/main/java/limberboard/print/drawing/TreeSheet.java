package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Check;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.CheckCutter;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.FaultCheck;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.TrailEntry;
import limberboard.trace.TreeCut;

/**
 * A diagnostic tree, whole or cut, as a sheet that any output can render: cautions in two lines,
 * all forks by number, its first forks as a drawing, how the figures are read, how each check is
 * made, and the cautions in full. Stateless.
 */
public final class TreeSheet {
  private static final String BY_NUMBER =
      "Begin at 1. Do what it says, find your answer, and go on at the number after its arrow, read"
          + " across: left, then right. “From” after a step is the way back. “Can't tell” is an"
          + " answer too.";

  private static final int LEAST_TO_DRAW = 20;

  /** The whole tree. */
  public CutPage of(DiagnosticTree tree) {
    return of(TreeCut.all(tree));
  }

  /** A tree cut down; what it leaves out is said at the front and at each way that goes on. */
  public CutPage of(TreeCut cut) {
    List<Part> parts = new ArrayList<>();
    Cautions.inShort(cut.cautions()).ifPresent(parts::add);
    found(cut.tree()).ifPresent(parts::add);
    parts.add(forks(cut));
    drawing(cut).ifPresent(parts::add);
    parts.add(TreeReading.figures(cut));
    hows(cut).ifPresent(parts::add);
    Cautions.inFull(cut.cautions()).ifPresent(parts::add);
    return page(cut, parts);
  }

  /**
   * What comes before the forks of other outputs: cautions in two lines, what was found already,
   * how to read it.
   *
   * @param goingOn how one goes from fork to fork in this output
   */
  static CutPage front(TreeCut cut, String goingOn) {
    List<Part> parts = new ArrayList<>();
    Cautions.inShort(cut.cautions()).ifPresent(parts::add);
    found(cut.tree()).ifPresent(parts::add);
    parts.add(TreeReading.part(cut, goingOn));
    return page(cut, parts);
  }

  private static CutPage page(TreeCut cut, List<Part> parts) {
    DiagnosticTree tree = cut.tree();
    return new CutPage(
        tree.from().fault().page().id(),
        tree.from().fault().page().kind(),
        CutPage.TREE,
        tree.from().fault().page().title(),
        "From what you notice to the mend",
        PageCutter.cutFor(tree.from().fault().fitting().boat()),
        parts);
  }

  private static Optional<Part> found(DiagnosticTree tree) {
    List<Block.Fact> facts = new ArrayList<>();
    for (TrailEntry entry : tree.from().trail()) {
      facts.add(Block.Fact.of(entry.text(), entry.answer()));
    }
    return facts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.FACTS, "Found already", List.of(new Block.Facts(facts))));
  }

  /** The first forks of a tree that has more than its drawing shows; otherwise it is no help. */
  private static Optional<Part> drawing(TreeCut cut) {
    return cut.forks().size() < LEAST_TO_DRAW
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.TABLES,
                "Where it begins",
                List.of(
                    new Block.Drawing(
                        new TreeDrawing().beginning(cut),
                        "The first steps drawn as a tree; they are the first forks of the list"))));
  }

  private static Part forks(TreeCut cut) {
    TreeWords words = new TreeWords(cut);
    List<Block.Fork> forks = new ArrayList<>();
    for (Fork fork : cut.forks()) {
      forks.add(
          new Block.Fork(
              fork.number(),
              words.from(fork),
              Inline.text(TreeWords.what(fork.step())),
              TreeWords.facts(fork),
              cautions(fork).orElse(""),
              words.ways(fork)));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.Paragraph.of(BY_NUMBER));
    TreeReading.whatIsCut(cut).map(Block.Paragraph::of).ifPresent(blocks::add);
    blocks.add(new Block.Forks(forks));
    return new Part(Part.Role.CHECKS, "The steps", blocks);
  }

  /** What there is to know at a fork, one line each, the names of its cautions before all else. */
  static List<String> facts(Fork fork) {
    List<String> facts = new ArrayList<>();
    cautions(fork).ifPresent(facts::add);
    facts.addAll(TreeWords.facts(fork));
    return facts;
  }

  /** Names the cautions of a fork's own step; the head says what to do about each. */
  private static Optional<String> cautions(Fork fork) {
    return Cautions.titles(fork.step().cautions()).map(titles -> "Caution: " + titles);
  }

  private static Optional<Part> hows(TreeCut cut) {
    Map<String, FaultCheck> checks = new LinkedHashMap<>();
    for (Fork fork : cut.forks()) {
      if (fork.step() instanceof DoCheck check) {
        checks.putIfAbsent(check.id(), check.check());
      }
    }
    return checks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.CHECKS, "How each check is made", items(checks)));
  }

  private static String how(Check check) {
    return CheckCutter.how(check) + CheckCutter.safety(check).map(text -> " " + text).orElse("");
  }

  private static List<Block> items(Map<String, FaultCheck> checks) {
    List<List<Block>> items = new ArrayList<>();
    for (FaultCheck check : checks.values()) {
      items.add(
          List.of(
              new Block.Paragraph(List.of(new Inline.Strong(Inline.text(check.ask())))),
              Block.Paragraph.of(how(check.check()))));
    }
    return List.of(new Block.Items(false, 1, true, items));
  }
}
