package limberboard.desktop.boats;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.MouseWheelEvent;
import javax.swing.JButton;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;

/** A field to type into, with what is wrong below it. */
final class TextInput extends Column {
  private final JTextComponent input;
  private final Wrapped wrong = Text.strong("");
  private final JButton take;
  private boolean refreshing;

  TextInput(BoatFormModel model, Field field, String hint) {
    super(2);
    input = field == Field.NOTE ? lines() : new JTextField();
    input.setName("boat-" + field.name());
    input.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, hint);
    When.typed(input, () -> typed(model, field));
    wrong.setVisible(false);
    take =
        Buttons.plain(
            "Take what the file has", "take-" + field.name(), () -> model.form().takeTheirs(field));
    take.setVisible(false);
    add(input instanceof JTextArea ? framed() : input);
    add(wrong);
    add(take);
  }

  private static JTextArea lines() {
    JTextArea area = new JTextArea(3, 20);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    Keys.focused(area, "TAB", area::transferFocus);
    Keys.focused(area, "shift TAB", area::transferFocusBackward);
    return area;
  }

  private JScrollPane framed() {
    JScrollPane pane = new Passing(input);
    pane.setBorder(UIManager.getBorder("TextField.border"));
    return pane;
  }

  /** Scrolls its own lines while there are more of them, and otherwise the form. */
  private static final class Passing extends JScrollPane {
    Passing(JTextComponent lines) {
      super(lines);
    }

    @Override
    protected void processMouseWheelEvent(MouseWheelEvent e) {
      JScrollBar bar = getVerticalScrollBar();
      boolean more =
          e.getWheelRotation() < 0
              ? bar.getValue() > bar.getMinimum()
              : bar.getValue() + bar.getVisibleAmount() < bar.getMaximum();
      if (more && bar.isVisible()) {
        super.processMouseWheelEvent(e);
      } else {
        getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, e, getParent()));
      }
    }
  }

  private void typed(BoatFormModel model, Field field) {
    if (!refreshing) {
      model.form().set(field, input.getText());
    }
  }

  JTextComponent control() {
    return input;
  }

  void refresh(String text, String problem, boolean other) {
    take.setVisible(other);
    if (!text.equals(input.getText())) {
      refreshing = true;
      input.setText(text);
      input.setCaretPosition(0);
      refreshing = false;
    }
    wrong.setText(problem);
    wrong.setVisible(!problem.isEmpty());
    input.getAccessibleContext().setAccessibleDescription(problem);
  }
}
