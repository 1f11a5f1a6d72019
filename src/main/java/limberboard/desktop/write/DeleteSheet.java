package limberboard.desktop.write;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.words.CountWords;
import limberboard.writing.change.PageLinks;

/** Shows what names a page before its file is deleted. */
final class DeleteSheet extends Sheet {
  private static final int MOST = 40;
  private final transient WriteModel model;
  private final Wrapped title = Text.heading("");
  private final Wrapped words = Text.plain("");
  private final Wrapped links = Text.quiet("");
  private final JButton keep;
  private final JButton delete;
  private transient Optional<OpenPage> page = Optional.empty();

  DeleteSheet(WriteModel model, Runnable away) {
    super(away);
    this.model = model;
    keep = Buttons.plain("Keep it", "write-keep", away);
    delete = Buttons.plain("Delete it", "write-delete-do", this::delete);
    Column column = column();
    column.add(title);
    column.add(words);
    column.add(Row.wrapping(8, keep, delete));
    column.add(links);
  }

  @Override
  void ready() {
    page = model.current();
    delete.setEnabled(false);
    links.setText("");
    page.ifPresent(
        now -> {
          title.setText("Delete “" + now.title() + "”?");
          words.setText("Looking what names it …");
          model.changes().links(now, found -> say(now, found));
        });
  }

  private void say(OpenPage of, List<PageLinks.Link> found) {
    if (!page.equals(Optional.of(of))) {
      return;
    }
    Optional<String> hindered =
        of.saved().isEmpty() ? Optional.empty() : model.changes().hindered(of);
    delete.setEnabled(hindered.isEmpty());
    words.setText(
        hindered.orElse(
            found.isEmpty()
                ? "Nothing else names it. Its text is kept, so that it can be brought back."
                : "What names it, in "
                    + CountWords.of(found.size(), "place")
                    + " below, will lead nowhere. Its text is kept, so that it can be brought"
                    + " back."));
    StringBuilder all = new StringBuilder();
    found.stream().limit(MOST).forEach(each -> all.append(line(each)).append('\n'));
    if (found.size() > MOST) {
      all.append("and ").append(CountWords.of(found.size() - MOST, "more place")).append('\n');
    }
    links.setText(all.toString().stripTrailing());
  }

  private static String line(PageLinks.Link link) {
    return link.file() + ", line " + link.line();
  }

  private void delete() {
    page.ifPresent(model.changes()::delete);
    away();
  }

  @Override
  JComponent begin() {
    return keep;
  }
}
