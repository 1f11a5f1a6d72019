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

/**
 * A diagnostic tree as a sheet that any output can render: cautions in two lines, how to read it,
 * its first forks as a drawing, all forks by number, how each check is made, and the cautions in
 * full. Stateless.
 */
public final class TreeSheet {
  private static final String BY_NUMBER =
      "Begin at 1. Do what it says, find your answer at the right, and go on at the number after"
          + " the arrow. “From” below a number is the way back.";

  /** The whole tree. */
  public CutPage of(DiagnosticTree tree) {
    List<Part> parts = new ArrayList<>();
    Cautions.inShort(tree.cautions()).ifPresent(parts::add);
    found(tree).ifPresent(parts::add);
    parts.add(TreeReading.part(tree, BY_NUMBER));
    parts.add(drawing(tree));
    parts.add(forks(tree));
    hows(tree).ifPresent(parts::add);
    Cautions.inFull(tree.cautions()).ifPresent(parts::add);
    return page(tree, parts);
  }

  /**
   * What comes before the forks where there is no end of a sheet: cautions in full, what was found
   * already, how to read it.
   *
   * @param goingOn how one goes from fork to fork in this output
   */
  CutPage front(DiagnosticTree tree, String goingOn) {
    List<Part> parts = new ArrayList<>();
    Cautions.part(tree.cautions()).ifPresent(parts::add);
    found(tree).ifPresent(parts::add);
    parts.add(TreeReading.part(tree, goingOn));
    return page(tree, parts);
  }

  private static CutPage page(DiagnosticTree tree, List<Part> parts) {
    return new CutPage(
        tree.from().fault().page().id(),
        tree.from().fault().page().kind(),
        tree.from().fault().page().title(),
        "From what you notice to the mend, step by step",
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

  private Part drawing(DiagnosticTree tree) {
    return new Part(
        Part.Role.TABLES,
        "Where it begins",
        List.of(
            new Block.Drawing(
                new TreeDrawing().beginning(tree),
                "The first steps drawn as a tree; they are the first forks of the list")));
  }

  private static Part forks(DiagnosticTree tree) {
    TreeWords words = new TreeWords(tree);
    List<Block> blocks = new ArrayList<>();
    for (Fork fork : tree.forks()) {
      blocks.add(
          new Block.Fork(
              fork.number(),
              words.from(fork),
              Inline.text(TreeWords.what(fork.step())),
              facts(fork),
              TreeWords.ways(fork)));
    }
    return new Part(Part.Role.CHECKS, "The steps", blocks);
  }

  /** What there is to know at a fork: one line each. */
  static List<String> facts(Fork fork) {
    List<String> facts = new ArrayList<>(TreeWords.facts(fork));
    cautions(fork).ifPresent(facts::add);
    return facts;
  }

  /** Names the cautions of a fork's own step; the head says what to do about each. */
  private static Optional<String> cautions(Fork fork) {
    return Cautions.titles(fork.step().cautions()).map(titles -> "Caution: " + titles);
  }

  private static Optional<Part> hows(DiagnosticTree tree) {
    Map<String, FaultCheck> checks = new LinkedHashMap<>();
    for (Fork fork : tree.forks()) {
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
