package limberboard.desktop.write.symptom;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.tree.TreeOut;
import limberboard.desktop.tree.TreePanel;
import limberboard.writing.symptom.SymptomRead;
import limberboard.writing.symptom.SymptomTable;

/**
 * A symptom's editor: the table, and below it the tree for the chosen boat with what is wrong and
 * how each cause would be traced beside it; an outline while there is no table yet. Where there is
 * little height, the table and what comes of it are tabs.
 */
public final class SymptomPanel extends JPanel {
  private static final int LEAST_WIDTH = 820;
  private static final int LEAST_HEIGHT = 480;
  private static final String TABLE = "table";
  private static final String OUTLINE = "outline";
  private static final String UNREADABLE = "unreadable";
  private final transient SymptomModel model;
  private final TableView view = new TableView();
  private final CellLine line;
  private final OutlineView outline;
  private final TableFindings findings = new TableFindings(this::go);
  private final TryView tries;
  private final TreePanel tree;
  private final Wrapped note = Text.quiet("");
  private final Wrapped unreadable = Text.reading("");
  private final Wrapped right = Text.plain("");
  private final JToggleButton toMend = new JToggleButton("Findings");
  private final JToggleButton toTry = new JToggleButton("Try it");
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final CardLayout sideCards = new CardLayout();
  private final JPanel sideShown = new JPanel(sideCards);
  private final JPanel table = new JPanel(new BorderLayout(0, 6));
  private final JPanel below = new JPanel(new BorderLayout());
  private final JTabbedPane tabs = new JTabbedPane();
  private final Divider divider;
  private String card = "";
  private boolean low;

  /**
   * An editor.
   *
   * @param model the symptom
   * @param out prints and saves the tree
   * @param dividers remembers dividers
   */
  public SymptomPanel(SymptomModel model, TreeOut out, Divider.Memory dividers) {
    super(new BorderLayout());
    this.model = model;
    setOpaque(false);
    line = new CellLine(model, view);
    tries = new TryView(at -> model.tree().follow(Optional.of(at)));
    outline = new OutlineView(model, dividers);
    tree = new TreePanel(model.tree(), step -> step.cautions(), out, dividers).withoutButtons();
    table.setOpaque(false);
    table.add(line, BorderLayout.NORTH);
    table.add(view, BorderLayout.CENTER);
    below.setOpaque(false);
    below.add(
        new Sides(
            LEAST_WIDTH,
            "Tree",
            treeSide(),
            "Findings and trying",
            side(),
            "symptom-below",
            0.6,
            dividers));
    divider = Divider.below("symptom", table, below, 0.58, dividers);
    shown.setOpaque(false);
    shown.add(divider, TABLE);
    shown.add(outline, OUTLINE);
    shown.add(broken(), UNREADABLE);
    add(shown, BorderLayout.CENTER);
    TableKeys.bind(view, model, line);
    view.on(() -> line.show(view.cell(), view.grid().table()), line::open);
    model.onChange(this::refresh);
    When.resized(this, this::fold);
    When.showing(this, () -> model.tree().want(isShowing()));
    refresh();
  }

  private JComponent treeSide() {
    JPanel side = new JPanel(new BorderLayout(0, 4));
    side.setOpaque(false);
    note.setName("symptom-note");
    Column top = new Column(2).padded(4, 4, 0, 4);
    top.add(note);
    side.add(top, BorderLayout.NORTH);
    side.add(tree, BorderLayout.CENTER);
    return side;
  }

  private JComponent side() {
    toMend.setName("symptom-to-mend");
    toTry.setName("symptom-to-try");
    javax.swing.ButtonGroup group = new javax.swing.ButtonGroup();
    for (JToggleButton each : List.of(toMend, toTry)) {
      group.add(each);
      Keys.focused(each, "ENTER", each::doClick);
      each.addActionListener(e -> look(toTry.isSelected()));
    }
    toMend.setSelected(true);
    sideShown.setOpaque(false);
    sideShown.add(findings, TABLE);
    sideShown.add(tries, OUTLINE);
    JPanel side = new JPanel(new BorderLayout(0, 4));
    side.setOpaque(false);
    side.setBorder(BorderFactory.createEmptyBorder(4, 8, 0, 0));
    side.add(Row.wrapping(6, toMend, toTry), BorderLayout.NORTH);
    side.add(sideShown, BorderLayout.CENTER);
    return side;
  }

  private JComponent broken() {
    Column all = new Column(8).padded(24, 8, 8, 8).atMost(720);
    all.add(Text.title("The table cannot be shown"));
    unreadable.setName("symptom-unreadable");
    all.add(unreadable);
    all.add(right);
    all.add(
        Text.plain("Nothing has been changed. Mend it in the text, and the table is here again."));
    return all.scrolling();
  }

  /** Shows the findings, or how each cause would be traced. */
  public void look(boolean trying) {
    (trying ? toTry : toMend).setSelected(true);
    sideCards.show(sideShown, trying ? OUTLINE : TABLE);
    if (low && trying) {
      tabs.setSelectedIndex(1);
    }
  }

  /** Shows the way of the first cause. */
  public void tryFirst() {
    tries.openFirst();
    if (low) {
      tabs.setSelectedIndex(1);
    }
  }

  /** Table and what comes of it are tabs where there is little height. */
  private void fold() {
    boolean wanted = getHeight() > 0 && getHeight() < UIScale.scale(LEAST_HEIGHT);
    if (wanted == low) {
      return;
    }
    low = wanted;
    shown.remove(low ? divider : tabs);
    if (low) {
      tabs.addTab("Table", table);
      tabs.addTab("Tree and findings", below);
      shown.add(tabs, TABLE);
    } else {
      tabs.removeAll();
      divider.setTopComponent(table);
      divider.setBottomComponent(below);
      table.setVisible(true);
      below.setVisible(true);
      shown.add(divider, TABLE);
    }
    cards.show(shown, card);
    revalidate();
    repaint();
  }

  private void refresh() {
    Optional<SymptomTable> now = model.table();
    boolean focused = isFocusWithin();
    String wanted = now.isEmpty() ? UNREADABLE : model.isOutlining() ? OUTLINE : TABLE;
    if (model.read() instanceof SymptomRead.Unreadable broken) {
      unreadable.setText(broken.wrong());
      right.setText(broken.right());
    }
    if (wanted.equals(OUTLINE)) {
      outline.refresh();
    } else {
      now.ifPresent(this::show);
    }
    boolean other = !wanted.equals(card);
    card = wanted;
    cards.show(shown, card);
    if (other && focused) {
      Later.focus(first());
    }
  }

  private boolean isFocusWithin() {
    java.awt.Component owner =
        java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && javax.swing.SwingUtilities.isDescendingFrom(owner, this);
  }

  private void show(SymptomTable now) {
    view.show(now);
    line.show(view.cell(), now);
    findings.show(model);
    tries.show(model);
    toMend.setText("Findings (" + model.findingCount() + ")");
    note.setText(model.treeNote());
    note.setVisible(!model.treeNote().isEmpty());
    tree.setVisible(model.fault().isPresent());
  }

  private void go(TableCell cell) {
    if (view.hasGrid()) {
      tabs.setSelectedIndex(low ? 0 : -1);
      view.grid().find(cell).ifPresent(view::select);
      Later.focus(view);
    }
  }

  /** Where work begins. */
  public JComponent first() {
    return card.equals(OUTLINE) ? outline.first() : view;
  }

  /** The regions that F6 goes through. */
  public List<JComponent> regions() {
    return card.equals(TABLE)
        ? List.of(
            view, tree.regions().get(0), toTry.isSelected() ? tries.first() : findings.first())
        : List.of(first());
  }
}
