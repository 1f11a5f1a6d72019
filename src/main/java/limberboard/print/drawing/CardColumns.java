package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.print.cut.PageCutter;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.print.drawing.DrawnBox.Shape;
import limberboard.print.type.Typography;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.TreeCut;

/**
 * Lays a card out: head and cautions across the sheet, the steps in two columns below, where to go
 * on at the foot. No letter is below 9 points. For one card, on one thread.
 */
final class CardColumns {
  private static final double SIZE = 12;
  private static final double TITLE = 19;
  private static final double GAP = 6;
  private static final double BETWEEN = 10;
  private static final double NAMES = 190;
  private static final double COLUMN = (TreeCard.WIDTH - BETWEEN) / 2;

  private final CardWords words;
  private final List<Texts> texts = new ArrayList<>();
  private final List<DrawnBox> boxes = new ArrayList<>();
  private double y;
  private boolean fits;

  /** Lines of text with their upper left corner. */
  private record Texts(List<Line> lines, double x, double y) {}

  CardColumns(TreeCut cut) {
    this.words = new CardWords(cut);
    text(words.title(), TITLE, true);
    text(PageCutter.cutFor(cut.tree().from().fault().fitting().boat()), SIZE, false);
    text(words.share(), SIZE, true);
    y += GAP;
    List<WorkCaution> cautions = cut.cautions();
    cautions.stream().filter(WorkCaution::emergency).forEach(this::emergency);
    cautions.stream().filter(caution -> !caution.emergency()).forEach(this::inShort);
    y += GAP;
    words.found().forEach(found -> text("Found already: " + found, SIZE, false));
    text(CardWords.how(), SIZE, false);
    y += GAP;
    List<Line> foot = Line.wrap(words.rest(), SIZE, false, TreeCard.WIDTH);
    double low = TreeCard.HEIGHT - height(foot);
    texts.add(new Texts(foot, 0, low));
    fits = true;
    steps(low - GAP);
  }

  private void text(String text, double size, boolean bold) {
    List<Line> lines = Line.wrap(text, size, bold, TreeCard.WIDTH);
    texts.add(new Texts(lines, 0, y));
    y += height(lines);
  }

  private static double height(List<Line> lines) {
    return lines.stream().mapToDouble(Line::height).sum();
  }

  private void emergency(WorkCaution caution) {
    List<Line> lines = new ArrayList<>();
    List<String> all = CardWords.inFull(caution);
    for (int i = 0; i < all.size(); i++) {
      lines.addAll(Line.wrap(all.get(i), SIZE, i < 2, DrawnBox.room(TreeCard.WIDTH - 2)));
    }
    double high = DrawnBox.height(lines);
    boxes.add(new DrawnBox(Shape.CAUTION, 1, y + 1, TreeCard.WIDTH - 2, high, lines));
    y += high + GAP;
  }

  /** The name at the left, danger and rule beside it. */
  private void inShort(WorkCaution caution) {
    List<Line> name = Line.wrap("Caution: " + caution.title(), SIZE, true, NAMES - BETWEEN);
    List<Line> rule = Line.wrap(CardWords.inShort(caution), SIZE, false, TreeCard.WIDTH - NAMES);
    texts.add(new Texts(name, 0, y));
    texts.add(new Texts(rule, NAMES, y));
    y += Math.max(height(name), height(rule)) + 2;
  }

  /** Down the left column, then down the right one. */
  private void steps(double low) {
    double x = 1;
    double top = y;
    double at = top;
    for (Fork fork : words.shown()) {
      DrawnBox box = box(words, fork);
      if (at + box.height() > low && x == 1) {
        x = COLUMN + BETWEEN - 1;
        at = top;
      }
      fits &= at + box.height() <= low;
      boxes.add(box.at(x, at));
      at += box.height() + GAP;
    }
  }

  private static DrawnBox box(CardWords words, Fork fork) {
    double room = DrawnBox.room(COLUMN);
    List<Line> lines = new ArrayList<>(Line.wrap(CardWords.step(fork), SIZE, true, room));
    CardWords.cautions(fork).ifPresent(names -> lines.addAll(Line.wrap(names, SIZE, true, room)));
    String facts =
        String.join(". ", words.facts(fork).stream().map(CardColumns::unstopped).toList()) + ".";
    lines.addAll(Line.wrap(Typography.joined(facts), SIZE, false, room));
    lines.addAll(Line.wrap(String.join("  ·  ", words.ways(fork)), SIZE, false, room));
    return new DrawnBox(shape(fork), 0, 0, COLUMN, DrawnBox.height(lines), lines);
  }

  private static String unstopped(String fact) {
    return fact.endsWith(".") ? fact.substring(0, fact.length() - 1) : fact;
  }

  private static Shape shape(Fork fork) {
    if (fork.step() instanceof DoMend) {
      return Shape.MEND;
    }
    return fork.step() instanceof CallYard ? Shape.YARD : Shape.CHECK;
  }

  /** About how much height a fork takes in its column. */
  static double height(TreeCut cut, Fork fork) {
    return fork.step() instanceof CallYard
        ? new Line("", SIZE, false).height()
        : box(new CardWords(cut), fork).height() + GAP;
  }

  /** Whether everything has its place on the sheet. */
  boolean fits() {
    return fits;
  }

  /** The drawing, as high as the sheet. */
  String drawn() {
    SvgPen pen = new SvgPen(words.title(), TreeCard.WIDTH, TreeCard.HEIGHT);
    texts.forEach(text -> pen.lines(text.lines(), text.x(), text.y()));
    TreeSvg out = new TreeSvg(pen);
    boxes.forEach(out::box);
    return pen.finish();
  }
}
