package limberboard.desktop.write.symptom;

import java.awt.BorderLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.writing.symptom.SymptomTable;

/**
 * The line above the table that says what the selected cell is about and in which its text is
 * typed. Enter takes the text and goes down, Tab takes it and goes right, Escape leaves it.
 */
final class CellLine extends Column {
  private final transient SymptomModel model;
  private final transient TableView view;
  private final JLabel about = Text.label(" ");
  private final JLabel hint = Text.label(" ");
  private final JTextField field = new JTextField();
  private final transient CellChoices choices;
  private transient Optional<TableCell> editing = Optional.empty();
  private transient boolean showing;
  private transient int turn;

  CellLine(SymptomModel model, TableView view) {
    super(3);
    this.model = model;
    this.view = view;
    this.choices = new CellChoices(field, this::take);
    about.setName("cell-about");
    hint.setName("cell-hint");
    field.setName("cell-text");
    field.getAccessibleContext().setAccessibleName("What stands in the cell");
    field.setFocusTraversalKeysEnabled(false);
    field.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
    about.putClientProperty("FlatLaf.styleClass", "h4");
    JPanel words = new JPanel(new BorderLayout(16, 0));
    words.setOpaque(false);
    words.add(about, BorderLayout.CENTER);
    words.add(hint, BorderLayout.EAST);
    add(words);
    add(field);
    When.typed(field, this::typed);
    Keys.focused(field, "DOWN", () -> choices.move(1));
    Keys.focused(field, "UP", () -> choices.move(-1));
    Keys.focused(field, "ENTER", () -> take(1));
    Keys.focused(field, "TAB", () -> take(0));
    Keys.focused(field, "shift TAB", this::leave);
    Keys.focused(field, "ESCAPE", this::leave);
    field.addFocusListener(new Edges());
    field.addKeyListener(new KeysOn(view, () -> editing.isEmpty() && view.hasGrid()));
    view.addKeyListener(new KeysOn(field, this::isEditing));
  }

  /** What is said of a cell while none is edited. */
  void show(TableCell cell, SymptomTable table) {
    if (editing.isPresent() && turn == model.turn()) {
      return;
    }
    editing = Optional.empty();
    choices.hide();
    CellWords words = new CellWords(table);
    set(words.edited(cell));
    say(model.said());
    view.speak(words.about(cell) + ": " + words.shown(cell));
  }

  private void set(String text) {
    showing = true;
    field.setText(text);
    field.setCaretPosition(0);
    showing = false;
  }

  /** Says something above the line; what the cell is about where there is nothing to say. */
  void say(String words) {
    boolean usual = words.isEmpty() && view.hasGrid();
    TableCell cell = editing.orElseGet(view::cell);
    CellWords said = new CellWords(view.grid().table());
    about.setText(usual ? said.about(cell) : words);
    about.setToolTipText(about.getText());
    hint.setText(usual ? (editing.isPresent() ? typing(cell) : said.keys(cell)) : "");
    hint.setForeground(Palette.QUIET.color());
    about.getAccessibleContext().setAccessibleName(about.getText());
  }

  private String typing(TableCell cell) {
    return new CellOffers(model.tools().session().library()).of(cell, "").isEmpty()
        ? "Enter takes it and goes down, Tab goes right, Esc leaves it"
        : "Type to find, arrows choose, Enter takes it, Esc leaves it";
  }

  /** Opens a cell with its text. */
  void open(TableCell cell) {
    begin(cell, new CellWords(view.grid().table()).edited(cell));
    field.selectAll();
  }

  /** Opens a cell with a letter in the place of its text. */
  void type(TableCell cell, char letter) {
    begin(cell, "");
    field.setText(String.valueOf(letter));
    field.setCaretPosition(1);
  }

  private void begin(TableCell cell, String text) {
    editing = Optional.of(cell);
    turn = model.turn();
    set(text);
    say("");
    field.requestFocusInWindow();
    offer();
  }

  private void typed() {
    if (!showing && editing.isPresent()) {
      offer();
    }
  }

  private void offer() {
    CellOffers offers = new CellOffers(model.tools().session().library());
    editing.ifPresent(cell -> choices.show(offers.of(cell, field.getText()), field.getText()));
  }

  private void take(CellOffers.Offer offer) {
    set(offer.text());
    take(1);
  }

  /** Whether a cell is still there, or may still be added. */
  private boolean isThere(TableCell cell) {
    boolean answer =
        cell instanceof TableCell.Answer more && more.check() < view.grid().table().checks().size();
    return answer || view.grid().find(cell).isPresent();
  }

  private void take(int down) {
    if (editing.isEmpty() || !isThere(editing.get())) {
      leave();
      return;
    }
    TableCell cell = editing.get();
    String text = choices.chosen().map(CellOffers.Offer::text).orElse(field.getText());
    if (model.edit(edits -> edits.typed(cell, text))) {
      editing = Optional.empty();
      leave();
      go(cell, down > 0);
    } else {
      say(model.said());
    }
  }

  /** To where the next thing is usually filled in. */
  private void go(TableCell from, boolean down) {
    TableGrid grid = view.grid();
    if (from instanceof TableCell.NewCheck) {
      int made = grid.table().checks().size() - 1;
      grid.find(new TableCell.How(made)).ifPresent(view::select);
    } else if (from instanceof TableCell.NewCause) {
      grid.find(from).ifPresent(view::select);
    } else {
      TablePlace at = grid.find(from).orElse(view.selected());
      view.select(down ? at.next(grid) : at.right(grid, 1));
    }
  }

  /** Back to the table, with nothing changed. */
  private void leave() {
    editing = Optional.empty();
    choices.hide();
    view.requestFocusInWindow();
    if (view.hasGrid()) {
      show(view.cell(), view.grid().table());
    }
  }

  boolean isEditing() {
    return editing.isPresent();
  }

  /** A click into the line opens the selected cell; going elsewhere leaves it. */
  private final class Edges extends FocusAdapter {
    @Override
    public void focusGained(FocusEvent e) {
      if (editing.isEmpty() && view.hasGrid()) {
        open(view.cell());
      }
    }

    @Override
    public void focusLost(FocusEvent e) {
      choices.hide();
      if (!e.isTemporary() && editing.isPresent()) {
        keep();
      }
    }
  }

  /** What was typed is not lost when the focus goes elsewhere. */
  private void keep() {
    TableCell cell = editing.get();
    String text = field.getText();
    editing = Optional.empty();
    boolean same = turn == model.turn() && isThere(cell) && !(cell instanceof TableCell.Word);
    if (same && !text.equals(new CellWords(view.grid().table()).edited(cell))) {
      model.edit(edits -> edits.typed(cell, text));
    }
  }
}
