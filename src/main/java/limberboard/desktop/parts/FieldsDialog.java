package limberboard.desktop.parts;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JPasswordField;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;

/** A dialog that asks for a few lines of text. For the event thread only. */
public final class FieldsDialog {
  private static final int GAP = 8;
  private static final int COLUMNS = 28;
  private static final int LEAST_WIDTH = 460;
  private final JDialog dialog;
  private final Column content = new Column(GAP).padded(16, 20, 8, 20);
  private final Form form = new Form(GAP);
  private final JButton deed;
  private final Component above;
  private JComponent first;
  private boolean done;

  /**
   * A dialog without fields.
   *
   * @param above what it stands above
   * @param title its title
   * @param words what is asked, and what becomes of the answer
   * @param deed what its button does
   */
  public FieldsDialog(Component above, String title, String words, String deed) {
    this.above = above;
    Window window = SwingUtilities.getWindowAncestor(above);
    this.dialog = new JDialog(window, title, java.awt.Dialog.ModalityType.APPLICATION_MODAL);
    this.deed = Buttons.main(deed, "dialog-do", this::take);
    this.first = this.deed;
    content.add(Text.plain(words));
    content.add(form);
    JPanel panel = new JPanel(new BorderLayout());
    panel.add(content.scrolling(), BorderLayout.CENTER);
    JPanel foot = new JPanel(new BorderLayout());
    foot.setBorder(BorderFactory.createEmptyBorder(GAP, 20, 14, 20));
    foot.add(Row.wrapping(GAP, this.deed, Buttons.plain("Cancel", "dialog-cancel", this::leave)));
    panel.add(foot, BorderLayout.SOUTH);
    dialog.setContentPane(panel);
    dialog.getRootPane().setDefaultButton(this.deed);
    Keys.within(dialog.getRootPane(), "ESCAPE", this::leave);
  }

  /** A field with a text in it. */
  public JTextField field(String label, String name, String text) {
    JTextField field = new JTextField(text, COLUMNS);
    add(label, name, field);
    return field;
  }

  /** A field whose text is not shown. */
  public JPasswordField secret(String label, String name) {
    JPasswordField field = new JPasswordField(COLUMNS);
    add(label, name, field);
    return field;
  }

  private void add(String label, String name, JTextField field) {
    field.setName(name);
    form.line(label, field, field);
    if (first == deed) {
      first = field;
    }
  }

  private void take() {
    done = true;
    dialog.dispose();
  }

  private void leave() {
    dialog.dispose();
  }

  /** Asks, and waits; whether the button was pressed. */
  public boolean ask() {
    dialog.pack();
    Dimension size = dialog.getSize();
    int most = above.getWidth() > 0 ? above.getWidth() : size.width;
    dialog.setSize(Math.max(size.width, Math.min(LEAST_WIDTH, most)), size.height);
    dialog.validate();
    dialog.setSize(dialog.getWidth(), dialog.getPreferredSize().height);
    dialog.setLocationRelativeTo(above);
    When.showing(first, () -> Later.focus(first));
    dialog.setVisible(true);
    if (dialog.getOwner() != null) {
      dialog.getOwner().requestFocus();
    }
    return done;
  }
}
