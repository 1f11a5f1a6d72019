package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.drawing.DrawnBox.Shape;
import limberboard.print.type.Typography;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.TreeCut;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * Places a tree from left to right, each leaf on a row of its own, each fork level with the first
 * of what it leads to, so that the tree begins at its upper left corner. For one drawing, on one
 * thread.
 */
final class SheetTreeLayout {
  private static final double ROW_GAP = 10;

  /** How far below a box's upper edge the lines meet it. */
  private static final double PORT = 22;

  private final TreeCut cut;
  private final TreeStyle style;
  private final Function<Fork, List<String>> facts;
  private final List<DrawnBox> boxes = new ArrayList<>();
  private final List<DrawnEdge> edges = new ArrayList<>();
  private double width;
  private double height;

  /**
   * Places a tree, whole or cut, with its upper left corner here.
   *
   * @param facts what there is to say at a fork, one line each
   */
  SheetTreeLayout(
      TreeCut cut, TreeStyle style, Function<Fork, List<String>> facts, double x, double y) {
    this.cut = cut;
    this.style = style;
    this.facts = facts;
    Node root = node(cut.tree().root(), 1);
    height = root.height();
    place(root, x, y);
  }

  List<DrawnBox> boxes() {
    return boxes;
  }

  List<DrawnEdge> edges() {
    return edges;
  }

  /** The right edge of what lies farthest to the right. */
  double right() {
    return width;
  }

  double height() {
    return height;
  }

  /** A box with what follows it, and how much height all that takes. */
  private record Node(DrawnBox box, List<Twig> twigs, double height) {}

  private record Twig(List<Line> above, Line below, Node to) {}

  private Node node(Fork fork, int level) {
    DrawnBox box = box(shape(fork.step()), lines(fork));
    List<Twig> twigs =
        level >= style.levels()
            ? List.of()
            : fork.branches().stream()
                .filter(branch -> !style.brief() || branch.then().filter(cut::keeps).isPresent())
                .map(branch -> twig(branch, level))
                .toList();
    double below = ROW_GAP * Math.max(0, twigs.size() - 1);
    for (Twig twig : twigs) {
      below += row(twig);
    }
    return new Node(box, twigs, Math.max(box.height(), below));
  }

  /** A row is high enough for its line's text on either side of the line. */
  private static double row(Twig twig) {
    return drop(twig) + Math.max(twig.to().height(), PORT + twig.below().height());
  }

  /** How far a box is moved down to leave room for the text above the line that leads to it. */
  private static double drop(Twig twig) {
    double text = twig.above().stream().mapToDouble(Line::height).sum();
    return Math.max(0, text + DrawnEdge.ABOVE - PORT);
  }

  private Twig twig(Branch branch, int level) {
    Node to =
        branch
            .then()
            .filter(cut::keeps)
            .map(then -> node(then, level + 1))
            .orElseGet(() -> new Node(end(branch), List.of(), end(branch).height()));
    double room = DrawnEdge.room(style.gap());
    return new Twig(
        Line.wrap(branch.finding().words(), style.size(), false, room),
        new Line(PerCent.words(branch.chance()), style.size(), true),
        to);
  }

  private DrawnBox end(Branch branch) {
    return switch (branch.end()) {
      case MENDED -> box(Shape.MENDED, wrapped("Mended", true));
      case TOO_RARE -> box(Shape.SELDOM, wrapped("Seldom: " + TreeWords.likeliest(branch), false));
      case FORK -> {
        String on = TreeWords.goesOn(branch.then().orElseThrow());
        yield box(Shape.ELSEWHERE, wrapped(Sentences.capital(on), false));
      }
    };
  }

  private List<Line> lines(Fork fork) {
    List<Line> lines = new ArrayList<>();
    String number = fork.number() + " · " + TreeWords.kind(fork.step());
    lines.addAll(wrapped(number, false));
    lines.addAll(wrapped(fork.step().text(), true));
    if (style.brief()) {
      lines.addAll(wrapped(Minutes.words(fork.step().minutes()), false));
    } else {
      facts.apply(fork).stream()
          .map(Typography::joined)
          .forEach(fact -> lines.addAll(wrapped(fact, false)));
    }
    return lines;
  }

  private List<Line> wrapped(String text, boolean bold) {
    return Line.wrap(text, style.size(), bold, DrawnBox.room(style.box()));
  }

  private DrawnBox box(Shape shape, List<Line> lines) {
    return new DrawnBox(shape, 0, 0, style.box(), DrawnBox.height(lines), lines);
  }

  private static Shape shape(NextStep step) {
    if (step instanceof DoMend) {
      return Shape.MEND;
    }
    return step instanceof CallYard ? Shape.YARD : Shape.CHECK;
  }

  private void place(Node node, double x, double y) {
    DrawnBox box = node.box().at(x, y);
    boxes.add(box);
    width = Math.max(width, x + box.width());
    double top = y;
    for (Twig twig : node.twigs()) {
      double toX = x + style.box() + style.gap();
      double toY = top + drop(twig);
      place(twig.to(), toX, toY);
      edges.add(
          new DrawnEdge(x + box.width(), y + PORT, toX, toY + PORT, twig.above(), twig.below()));
      top += row(twig) + ROW_GAP;
    }
  }
}
