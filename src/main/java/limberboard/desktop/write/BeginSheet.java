package limberboard.desktop.write;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.WriteModel;
import limberboard.library.page.Kind;
import limberboard.words.Sentences;
import limberboard.writing.start.BegunPage;
import limberboard.writing.start.IdWords;

/** Asks what a new page is, and begins it from the template of its kind. */
final class BeginSheet extends Sheet {
  private final transient WriteModel model;
  private final transient Consumer<BegunPage> begun;
  private final JTextField title = new JTextField();
  private final JTextField name = new JTextField();
  private final ChoiceBox<Kind> kinds;
  private final Wrapped words = Text.quiet("");
  private final JButton begin;
  private Kind kind = Kind.PROCEDURE;
  private boolean naming;
  private boolean named;

  BeginSheet(WriteModel model, Consumer<BegunPage> begun, Runnable away) {
    super(away);
    this.model = model;
    this.begun = begun;
    kinds =
        new ChoiceBox<>(
            "write-kind",
            "What kind of page",
            each -> Sentences.capital(each.word()),
            each -> {
              kind = each;
              refresh();
            });
    begin = Buttons.main("Begin it", "write-begin", this::beginPage);
    title.setName("write-new-title");
    name.setName("write-new-name");
    Column column = column();
    column.add(Text.heading("A new page"));
    column.add(
        Text.quiet(
            "It begins with what such a page must have. Nothing is written until it is saved."));
    Form form = new Form(10);
    form.line("Kind", kinds, kinds);
    form.line("Title", title, title);
    form.line("File name", name, name);
    column.add(form);
    column.add(words);
    column.add(Row.wrapping(8, begin, Buttons.plain("Back to the text", "write-back", away)));
    When.typed(title, this::titled);
    When.typed(name, this::nameTyped);
    Keys.focused(title, "ENTER", this::beginPage);
    Keys.focused(name, "ENTER", this::beginPage);
  }

  @Override
  void ready() {
    kinds.show(List.of(Kind.values()), kind);
    named = false;
    title.setText("");
    titled();
  }

  /** The file's name follows the title until somebody types another. */
  private void titled() {
    if (!named) {
      naming = true;
      name.setText(title.getText().isBlank() ? "" : IdWords.of(title.getText()));
      naming = false;
    }
    refresh();
  }

  private void nameTyped() {
    named = named || !naming;
    refresh();
  }

  private String wrong() {
    String id = name.getText().strip();
    if (title.getText().isBlank()) {
      return "Type a title.";
    }
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      return "The file name is of lower-case letters, digits and hyphens.";
    }
    boolean open = model.pages().stream().anyMatch(page -> page.id().equals(id));
    return model.page(id).isPresent() || open
        ? "There is a page of this name already. Choose another file name."
        : "";
  }

  /** What is there may have changed. */
  void refresh() {
    String wrong = wrong();
    words.setText(
        wrong.isEmpty()
            ? "Its file will be articles/" + kind.folder() + "/" + name.getText().strip() + ".md."
            : wrong);
    begin.setEnabled(wrong.isEmpty());
  }

  private void beginPage() {
    if (wrong().isEmpty()) {
      begun.accept(BegunPage.of(kind, title.getText().strip(), name.getText().strip()));
    }
  }

  @Override
  JComponent begin() {
    return title;
  }

  @Override
  List<JComponent> regions() {
    return List.of(title, kinds);
  }
}
