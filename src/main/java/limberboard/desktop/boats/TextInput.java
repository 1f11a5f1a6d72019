package limberboard.desktop.boats;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** A field to type into, with what is wrong below it. */
final class TextInput extends Column {
  private final JTextComponent input;
  private final Wrapped wrong = Text.strong("");
  private boolean refreshing;

  TextInput(BoatFormModel model, Field field, String hint) {
    super(2);
    input = field == Field.NOTE ? lines() : new JTextField();
    input.setName("boat-" + field.name());
    input.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, hint);
    input
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent e) {
                typed(model, field);
              }

              @Override
              public void removeUpdate(DocumentEvent e) {
                typed(model, field);
              }

              @Override
              public void changedUpdate(DocumentEvent e) {
                typed(model, field);
              }
            });
    wrong.setVisible(false);
    add(input instanceof JTextArea ? framed() : input);
    add(wrong);
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
    JScrollPane pane = new JScrollPane(input);
    pane.setBorder(UIManager.getBorder("TextField.border"));
    return pane;
  }

  private void typed(BoatFormModel model, Field field) {
    if (!refreshing) {
      model.set(field, input.getText());
    }
  }

  JTextComponent control() {
    return input;
  }

  void refresh(String text, String problem) {
    if (!text.equals(input.getText())) {
      refreshing = true;
      input.setText(text);
      refreshing = false;
    }
    wrong.setText(problem);
    wrong.setVisible(!problem.isEmpty());
    input.getAccessibleContext().setAccessibleDescription(problem);
  }
}
