package limberboard.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import limberboard.library.Caution;
import limberboard.library.Library;
import limberboard.library.Page;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.FaultCheck;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.TrailEntry;
import limberboard.workings.QuantityWords;

/**
 * A diagnostic tree as a sheet that any output can render: cautions first, how to read it, its
 * first forks as a drawing, all forks by number, and how each check is made. Immutable; any thread.
 */
public final class TreeSheet {
  private static final String BY_NUMBER =
      "Begin at 1. Do what it says, find your answer at the right, and go on at the number after the"
          + " arrow. “From” below a number is the way back.";

  private final Library library;

  /** Sheets whose cautions and procedures are looked up in this library. */
  public TreeSheet(Library library) {
    this.library = library;
  }

  /** The whole tree. */
  public CutPage of(DiagnosticTree tree) {
    Cutting cutting = cutting(tree);
    List<Part> parts = front(tree, BY_NUMBER, cutting);
    parts.add(drawing(tree));
    parts.add(forks(tree, cutting));
    hows(tree).ifPresent(parts::add);
    return page(tree, parts);
  }

  /**
   * What comes before the forks: cautions, what was found already, how to read it.
   *
   * @param goingOn how one goes from fork to fork in this output
   */
  CutPage front(DiagnosticTree tree, String goingOn) {
    return page(tree, front(tree, goingOn, cutting(tree)));
  }

  private Cutting cutting(DiagnosticTree tree) {
    return new Cutting(library, Optional.of(tree.from().fault().fitting()), QuantityWords.METRIC);
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

  private List<Part> front(DiagnosticTree tree, String goingOn, Cutting cutting) {
    List<Part> parts = new ArrayList<>();
    new TreeCautions(library).part(tree, cutting).ifPresent(parts::add);
    found(tree).ifPresent(parts::add);
    parts.add(TreeReading.part(tree, goingOn));
    return parts;
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
                new TreeDrawing(library).beginning(tree),
                "The first steps drawn as a tree; they are the first forks of the list")));
  }

  private Part forks(DiagnosticTree tree, Cutting cutting) {
    TreeWords words = new TreeWords(tree);
    List<Block> blocks = new ArrayList<>();
    for (Fork fork : tree.forks()) {
      blocks.add(
          new Block.Fork(
              fork.number(),
              words.from(fork),
              Inline.text(TreeWords.what(fork.step())),
              facts(fork, cutting),
              TreeWords.ways(fork)));
    }
    return new Part(Part.Role.CHECKS, "The steps", blocks);
  }

  /** What there is to know at each fork of a tree: one line each. */
  Function<Fork, List<String>> facts(DiagnosticTree tree) {
    Cutting cutting = cutting(tree);
    return fork -> facts(fork, cutting);
  }

  private List<String> facts(Fork fork, Cutting cutting) {
    List<String> facts = new ArrayList<>(TreeWords.facts(fork));
    cautions(fork, cutting).ifPresent(facts::add);
    return facts;
  }

  /** Names the cautions of a fork's own step; they stand in full at the front. */
  private Optional<String> cautions(Fork fork, Cutting cutting) {
    List<String> ids = new TreeCautions(library).of(fork.step(), cutting);
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Caution, in full at the beginning: "
                + ids.stream()
                    .map(id -> library.caution(id).map(Page<Caution>::title).orElse(id))
                    .collect(Collectors.joining("; ")));
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

  private static List<Block> items(Map<String, FaultCheck> checks) {
    List<List<Block>> items = new ArrayList<>();
    for (FaultCheck check : checks.values()) {
      items.add(
          List.of(
              new Block.Paragraph(List.of(new Inline.Strong(Inline.text(check.ask())))),
              Block.Paragraph.of(CheckCutter.how(check.check()))));
    }
    return List.of(new Block.Items(false, 1, true, items));
  }
}
