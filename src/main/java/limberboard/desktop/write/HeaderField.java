package limberboard.desktop.write;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Keys;
import limberboard.writing.form.FieldDeclaration;
import limberboard.writing.form.FieldKind;
import limberboard.writing.form.FieldValue;
import limberboard.writing.form.FormField;

/** The input of one field of a header. For the event thread only. */
final class HeaderField {
  private static final int MOST_ROWS = 10;
  private static final String NONE = "";
  private final FieldDeclaration declared;
  private final Consumer<Optional<FieldValue>> taken;
  private final JComponent component;
  private Optional<JTextComponent> text = Optional.empty();
  private Optional<ChoiceBox<String>> choice = Optional.empty();
  private String shown = "";

  /**
   * An input.
   *
   * @param declared what the field can hold
   * @param taken takes what it is to say; empty to clear it
   */
  HeaderField(FieldDeclaration declared, Consumer<Optional<FieldValue>> taken) {
    this.declared = declared;
    this.taken = taken;
    component =
        switch (declared.kind()) {
          case CHOICE, YES_NO -> choice();
          case LIST, NESTED -> area();
          default -> field();
        };
    component.setName("write-field-" + declared.key());
  }

  private JComponent choice() {
    ChoiceBox<String> box =
        new ChoiceBox<>(
            "write-field-" + declared.key(),
            declared.key(),
            word -> word.isEmpty() ? "not said" : word.replace('-', ' '),
            word ->
                taken.accept(
                    word.isEmpty() ? Optional.empty() : Optional.of(new FieldValue.Text(word))));
    choice = Optional.of(box);
    return box;
  }

  private JComponent field() {
    JTextField field = new JTextField();
    if (declared.required()) {
      field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "must be there");
    }
    Keys.focused(field, "ENTER", this::commit);
    return typed(field);
  }

  private JComponent area() {
    JTextArea area = new Lines(declared.kind() == FieldKind.NESTED);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    area.setBorder(
        BorderFactory.createCompoundBorder(
            UIManager.getBorder("TextField.border"), BorderFactory.createEmptyBorder(1, 2, 1, 2)));
    area.setToolTipText(
        declared.kind() == FieldKind.LIST ? "One a line" : "Keys and values, as in the text");
    return typed(area);
  }

  /** What is shown in it while it has not the focus moves nothing. */
  private static final class Lines extends JTextArea {
    private final boolean keys;

    Lines(boolean keys) {
      super(1, 10);
      this.keys = keys;
      updateUI();
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setOpaque(false);
      if (keys) {
        int size = UIManager.getFont("defaultFont").getSize();
        setFont(new Font(Font.MONOSPACED, Font.PLAIN, size));
      }
    }

    /** Its ground, within its rounded edge. */
    @Override
    protected void paintComponent(Graphics g) {
      int edge = UIScale.scale(2);
      g.setColor(getBackground());
      g.fillRoundRect(
          edge, edge, getWidth() - 2 * edge, getHeight() - 2 * edge, 3 * edge, 3 * edge);
      super.paintComponent(g);
    }

    @Override
    public void scrollRectToVisible(Rectangle place) {
      if (isFocusOwner()) {
        super.scrollRectToVisible(place);
      }
    }
  }

  private JComponent typed(JTextComponent input) {
    text = Optional.of(input);
    input.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            if (!e.isTemporary()) {
              commit();
            }
          }
        });
    return input;
  }

  JComponent component() {
    return component;
  }

  FieldDeclaration declared() {
    return declared;
  }

  /** Hands on what is typed, if that is another than what was shown. */
  void commit() {
    String now = text.map(JTextComponent::getText).orElse(shown);
    if (!now.equals(shown)) {
      shown = now;
      taken.accept(value(now));
    }
  }

  private Optional<FieldValue> value(String typed) {
    if (typed.isBlank()) {
      return Optional.empty();
    }
    return Optional.of(
        switch (declared.kind()) {
          case LIST ->
              new FieldValue.Many(
                  Arrays.stream(typed.split("\n"))
                      .map(String::strip)
                      .filter(l -> !l.isEmpty())
                      .toList());
          case NESTED -> new FieldValue.Nested(typed.stripTrailing());
          default -> new FieldValue.Text(typed.strip());
        });
  }

  /** Shows what the field says; what is being typed in it stays. */
  void show(FormField field) {
    String says = field.value().map(HeaderField::words).orElse(NONE);
    boolean typing =
        text.filter(input -> input.isFocusOwner() && !input.getText().equals(shown)).isPresent();
    if (choice.isPresent()) {
      List<String> words = new ArrayList<>(List.of(NONE));
      words.addAll(declared.choices());
      if (!words.contains(says)) {
        words.add(says);
      }
      choice.get().show(words, says);
    } else if (!typing && !says.equals(text.get().getText())) {
      text.get().setText(says);
      text.get().setCaretPosition(0);
      if (text.get() instanceof JTextArea area) {
        area.setRows(Math.max(1, Math.min(MOST_ROWS, area.getLineCount())));
      }
    }
    if (!typing) {
      shown = says;
    }
  }

  private static String words(FieldValue value) {
    if (value instanceof FieldValue.Many many) {
      return String.join("\n", many.entries());
    }
    return value instanceof FieldValue.Nested nested
        ? nested.yaml()
        : ((FieldValue.Text) value).text();
  }
}
