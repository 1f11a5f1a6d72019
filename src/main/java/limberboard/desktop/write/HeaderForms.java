package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.Checked;
import limberboard.desktop.write.state.HeaderChanges;
import limberboard.desktop.write.state.OpenPage;
import limberboard.library.page.Kind;
import limberboard.words.Sentences;
import limberboard.writing.form.FieldDeclaration;
import limberboard.writing.form.FieldKind;
import limberboard.writing.form.FieldValue;
import limberboard.writing.form.FormField;

/** The header of the page as a form, in step with the text. */
final class HeaderForms implements View {
  private final HeaderChanges changes;
  private final JPanel panel = new JPanel(new BorderLayout(0, 6));
  private final Wrapped words = Text.quiet("");
  private final JPanel middle = new JPanel(new BorderLayout());
  private List<HeaderField> fields = List.of();
  private Optional<Kind> kind = Optional.empty();
  private Optional<OpenPage> page = Optional.empty();

  HeaderForms(HeaderChanges changes) {
    this.changes = changes;
    panel.setOpaque(false);
    middle.setOpaque(false);
    panel.setBorder(BorderFactory.createEmptyBorder(0, 6, 0, 0));
    Column head = new Column(0);
    head.add(words);
    panel.add(head, BorderLayout.NORTH);
    panel.add(middle, BorderLayout.CENTER);
  }

  /** Shows another page, or the same as it is typed now. */
  void show(OpenPage other) {
    if (!page.equals(Optional.of(other))) {
      fields.forEach(HeaderField::commit);
    }
    page = Optional.of(other);
    if (!kind.equals(Optional.of(other.kind()))) {
      kind = Optional.of(other.kind());
      build(other.kind());
    }
    Optional<Checked> checked = other.checked();
    boolean readable = checked.isEmpty() || checked.get().form().isPresent();
    middle.setVisible(readable);
    say(
        readable
            ? ""
            : "The header cannot be read as keys and values just now. Once it is mended in the"
                + " text, the form stands here again.");
    checked.ifPresent(found -> fill(found.fields()));
  }

  private void say(String what) {
    words.setText(what);
    words.setVisible(!what.isEmpty());
  }

  private void build(Kind of) {
    Form form = new Form(8);
    List<HeaderField> all = new ArrayList<>();
    for (FieldDeclaration declared : FieldDeclaration.of(of)) {
      HeaderField field = new HeaderField(declared, value -> set(declared.key(), value));
      String label = Sentences.capital(declared.key().replace('-', ' '));
      form.line(
          declared.kind() == FieldKind.LIST ? label + ", one a line" : label,
          field.component(),
          field.component());
      all.add(field);
    }
    fields = List.copyOf(all);
    Column column = new Column(0).padded(2, 2, 12, 8);
    column.add(form);
    middle.removeAll();
    middle.add(column.scrolling(), BorderLayout.CENTER);
    middle.revalidate();
  }

  private void set(String key, Optional<FieldValue> value) {
    page.ifPresent(
        now ->
            changes.set(
                now,
                key,
                value,
                refused -> {
                  if (!refused.isEmpty()) {
                    say(Sentences.capital(key.replace('-', ' ')) + ": " + refused);
                  }
                }));
  }

  private void fill(List<FormField> found) {
    for (FormField each : found) {
      fields.stream()
          .filter(field -> field.declared().key().equals(each.key()))
          .forEach(field -> field.show(each));
    }
  }

  @Override
  public Name name() {
    return new Name("header", "Header", '\0');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(fields.isEmpty() ? middle : fields.get(0).component());
  }
}
