package limberboard.desktop.write;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.words.CountWords;
import limberboard.writing.change.PageLinks;

/** Gives a page's file another name, with every place that names it. */
final class RenameSheet extends Sheet {
  private final transient WriteModel model;
  private final JTextField name = new JTextField();
  private final Wrapped links = Text.plain("");
  private final Wrapped wrong = Text.quiet("");
  private final JButton rename;
  private transient Optional<OpenPage> page = Optional.empty();

  RenameSheet(WriteModel model, Runnable away) {
    super(away);
    this.model = model;
    rename = Buttons.main("Rename", "write-rename-do", this::rename);
    name.setName("write-rename");
    Column column = column();
    column.add(Text.heading("Rename the page"));
    column.add(
        Text.quiet(
            "The name of its file, by which other pages, boats and logs know it. Its title is"
                + " changed in its text."));
    Form form = new Form(10);
    form.line("File name", name, name);
    column.add(form);
    column.add(links);
    column.add(wrong);
    column.add(Row.wrapping(8, rename, Buttons.plain("Back to the text", "write-back", away)));
    When.typed(name, this::refresh);
    Keys.focused(name, "ENTER", this::rename);
  }

  @Override
  void ready() {
    page = model.current();
    page.ifPresent(
        now -> {
          name.setText(now.id());
          name.selectAll();
          links.setText("Looking what names it …");
          model.changes().links(now, this::say);
        });
    refresh();
  }

  private void say(List<PageLinks.Link> found) {
    long files = found.stream().map(PageLinks.Link::file).distinct().count();
    links.setText(
        found.isEmpty()
            ? "Nothing else names it."
            : CountWords.of(found.size(), "place")
                + " in "
                + CountWords.of(files, "other file")
                + " will be changed with it.");
  }

  private String why() {
    String id = name.getText().strip();
    Optional<String> hindered = page.flatMap(model.changes()::hindered);
    if (hindered.isPresent()) {
      return hindered.get();
    }
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      return "A file name is of lower-case letters, digits and hyphens.";
    }
    if (page.filter(now -> now.id().equals(id)).isPresent()) {
      return "That is its name now.";
    }
    return model.page(id).isPresent() ? "There is a page of this name already." : "";
  }

  private void refresh() {
    wrong.setText(why());
    rename.setEnabled(why().isEmpty());
  }

  private void rename() {
    if (why().isEmpty()) {
      page.ifPresent(now -> model.changes().rename(now, name.getText().strip()));
      away();
    }
  }

  @Override
  JComponent begin() {
    return name;
  }
}
