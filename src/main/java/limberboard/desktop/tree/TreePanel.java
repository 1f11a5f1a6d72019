package limberboard.desktop.tree;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.NextStep;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;

/** The whole tree of a trace, with the selected step told in full beside it. */
public final class TreePanel extends JPanel {
  private static final int LEAST_WIDTH = 760;
  private static final String TREE = "tree";
  private static final String WAIT = "wait";
  private final transient TreeModel model;
  private final transient TreeOut out;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final TreeCanvas view = new TreeCanvas();
  private final JScrollPane scroller = new JScrollPane(view);
  private final Column top = new Column(6);
  private final TreeTools tools;
  private final Wrapped summary = Text.quiet("");
  private final ForkDetails details;
  private final TreeWaiting waiting;

  /** Tells the cautions of a step. */
  @FunctionalInterface
  public interface Cautions {
    /** The cautions of a step, as far as they do not stand above the whole trace anyway. */
    List<WorkCaution> of(NextStep step);

    /** Whether one has been read in the trace. */
    default boolean isRead(WorkCaution caution) {
      return false;
    }
  }

  /**
   * A panel.
   *
   * @param model the tree
   * @param cautions tells the cautions of a step
   * @param out prints and saves the tree
   * @param dividers remembers where the divider stands
   */
  public TreePanel(TreeModel model, Cautions cautions, TreeOut out, Divider.Memory dividers) {
    super(new BorderLayout(0, 8));
    this.model = model;
    this.out = out;
    this.details = new ForkDetails(cautions);
    this.waiting = new TreeWaiting(model);
    this.tools = new TreeTools(model, view, out);
    setOpaque(false);
    shown.setOpaque(false);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    scroller.getVerticalScrollBar().setUnitIncrement(40);
    top.add(tools);
    top.add(summary);
    JPanel drawn = new JPanel(new BorderLayout(0, 8));
    drawn.setOpaque(false);
    drawn.add(top, BorderLayout.NORTH);
    drawn.add(scroller, BorderLayout.CENTER);
    Sides sides =
        new Sides(
            LEAST_WIDTH,
            "The whole tree",
            drawn,
            "This step",
            details,
            "tree-step",
            0.74,
            dividers);
    sides.onFold(() -> fold(sides.isNarrow()));
    shown.add(sides, TREE);
    shown.add(waiting, WAIT);
    add(shown, BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  /** Where there is little room the tree takes it, and what it is goes beside the step. */
  private void fold(boolean narrow) {
    details.foot(summary, narrow);
    if (!narrow) {
      top.add(summary);
    }
  }

  /** Leaves the buttons above the tree out, where there is little room; the keys do the same. */
  public TreePanel withoutButtons() {
    top.remove(tools);
    return this;
  }

  /** Prints as many levels of the tree as are chosen; empty while there is none. */
  public Optional<Runnable> print() {
    return model.cut().map(cut -> () -> out.print(cut));
  }

  /** The regions that F6 goes through. */
  public List<JComponent> regions() {
    return model.walk().isPresent() ? List.of(view, details.region()) : List.of(waiting.first());
  }

  private void refresh() {
    Optional<TreeWalk> walk = model.walk();
    boolean waited = waiting.isFocused();
    cards.show(shown, walk.isPresent() ? TREE : WAIT);
    waiting.refresh();
    tools.refresh();
    walk.ifPresent(
        now -> {
          summary.setText(words(now.tree()));
          details.show(now);
        });
    view.show(walk);
    if (waited && walk.isPresent()) {
      view.requestFocusInWindow();
    }
  }

  private String words(DiagnosticTree tree) {
    String begins =
        model.isFromHere()
            ? "You went another way than the tree from the beginning, so this one begins where you"
                + " are: "
            : "From the beginning: ";
    String off =
        !model.isFromHere() && model.wentAnotherWay()
            ? " You went another way, so where you are is not on it."
            : "";
    return begins
        + CountWords.of(tree.forks().size(), "step")
        + ", about "
        + Minutes.words(tree.root().expectedMinutes())
        + " on average."
        + off
        + left(tree);
  }

  private static String left(DiagnosticTree tree) {
    return tree.notDrawn() > 0
        ? " Left out: what is met less than once in "
            + Math.round(1 / tree.rarest())
            + " times, together "
            + PerCent.words(tree.notDrawn())
            + "."
        : "";
  }
}
