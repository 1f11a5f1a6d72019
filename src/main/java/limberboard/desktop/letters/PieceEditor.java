package limberboard.desktop.letters;

import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.letters.answer.DraftBlock;

/**
 * A piece of a draft. What a person wrote in it stays; when its grounds have changed, it says so
 * and shows what the program would write now.
 */
final class PieceEditor extends Column {
  private final String id;
  private final LetterModel model;
  private final LetterArea area;
  private final Wrapped told = Text.strong("");
  private final Wrapped instead = Text.quiet("");
  private final Row head;
  private boolean showing;

  PieceEditor(DraftBlock block, LetterModel model) {
    super(3);
    this.id = block.id();
    this.model = model;
    String name = PieceWords.of(id);
    area = LetterArea.edited(shown(block), name);
    area.setName("piece-" + id);
    area.setToolTipText(name);
    JButton back =
        Buttons.plain(
            "As written", "as-written-" + id, "The program's own words again", this::asWritten);
    back.getAccessibleContext().setAccessibleName("As written: " + name);
    head = Row.worded(8, told, back);
    When.typed(area, this::typed);
    area.addFocusListener(
        new java.awt.event.FocusAdapter() {
          @Override
          public void focusLost(java.awt.event.FocusEvent e) {
            model.keepEdits();
          }
        });
    add(head);
    add(area);
    add(instead);
    show(block);
  }

  private static String shown(DraftBlock block) {
    return block.edit().map(DraftBlock.Edit::text).orElseGet(() -> block.text().stripTrailing());
  }

  private void typed() {
    if (!showing) {
      model.edit(id, area.getText());
    }
  }

  private void asWritten() {
    area.requestFocusInWindow();
    model.asWritten(id);
  }

  /** Shows the piece as it is now; what is being typed is not touched. */
  void show(DraftBlock block) {
    String text = shown(block);
    if (!area.getText().equals(text)) {
      showing = true;
      area.setText(text);
      area.setCaretPosition(0);
      showing = false;
    }
    head.setVisible(block.isEdited());
    told.setText(state(block));
    instead.setVisible(block.groundsChanged());
    instead.setText(block.groundsChanged() ? instead(block) : "");
    area.getAccessibleContext().setAccessibleDescription(block.isEdited() ? state(block) : "");
  }

  private String state(DraftBlock block) {
    String name = PieceWords.of(id);
    if (block.groundsChanged()) {
      return name + ": yours. What it was written on has changed.";
    }
    return name + (block.text().isBlank() ? ": left out." : ": yours.");
  }

  private static String instead(DraftBlock block) {
    String now = block.asWritten().text().strip();
    return now.isEmpty()
        ? "The program would leave it out now."
        : "The program would write now: " + now;
  }

  LetterArea area() {
    return area;
  }
}
