package limberboard.desktop.parts;

import java.awt.datatransfer.DataFlavor;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.text.JTextComponent;

/** The menu of a text component: what can be done with its text. */
final class TextMenu {
  private TextMenu() {}

  /** The menu as it stands now. */
  static JPopupMenu of(JTextComponent text) {
    FieldTyping typing = FieldTyping.of(text);
    boolean selected = text.getSelectionStart() != text.getSelectionEnd();
    boolean writable = text.isEditable() && text.isEnabled();
    JPopupMenu menu = new JPopupMenu();
    if (writable) {
      add(menu, "Undo", "control Z", typing.canUndo(), typing::undo);
      add(menu, "Redo", "control shift Z", typing.canRedo(), typing::redo);
      menu.addSeparator();
      add(menu, "Cut", "control X", selected, () -> typing.byHand(text::cut));
    }
    add(menu, "Copy", "control C", selected, text::copy);
    if (writable) {
      add(menu, "Paste", "control V", canPaste(text), () -> typing.byHand(text::paste));
    }
    menu.addSeparator();
    boolean some = text.getDocument().getLength() > 0;
    add(menu, "Select all", "control A", some, text::selectAll);
    return menu;
  }

  private static void add(
      JPopupMenu menu, String title, String key, boolean possible, Runnable action) {
    JMenuItem item = new JMenuItem(title);
    item.setAccelerator(Keys.stroke(key));
    item.setName("text-" + title);
    item.setEnabled(possible);
    item.addActionListener(e -> action.run());
    menu.add(item);
  }

  private static boolean canPaste(JTextComponent text) {
    try {
      return text.getToolkit().getSystemClipboard().isDataFlavorAvailable(DataFlavor.stringFlavor);
    } catch (IllegalStateException e) {
      return true;
    }
  }
}
