package limberboard.desktop.write;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Tools;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.OpenPage;
import limberboard.library.page.Kind;
import limberboard.words.CountWords;

/** What page is written, whether it is saved, and what can be done with it. */
final class WriteTop extends Column {
  private final Wrapped title = Text.title("");
  private final Wrapped state = Text.quiet("");
  private final JButton save;
  private final JButton table;
  private final List<JButton> ofPage;
  private final Tools tools;

  /** What can be done. */
  interface Deeds {
    /** Saves the page. */
    void save();

    /** Shows what can be opened. */
    void choose();

    /** Begins a page. */
    void begin();

    /** Puts a link in. */
    void link();

    /** Puts a picture in. */
    void picture();

    /** Shows a symptom as a table. */
    void table();

    /** Reads the page. */
    void read();

    /** Renames the page. */
    void rename();

    /** Records what was saved. */
    void record();

    /** Puts what the file holds in the place of what was typed. */
    void throwAway();

    /** Closes the page. */
    void close();

    /** Deletes the page. */
    void delete();
  }

  WriteTop(Deeds deeds) {
    super(4);
    save = Buttons.main("Save", "write-save", deeds::save);
    save.setToolTipText("Ctrl+S");
    JButton pages = button("Pages …", "write-choose", "Ctrl+G", deeds::choose);
    JButton fresh = button("New page …", "write-new", "Ctrl+Shift+N", deeds::begin);
    table =
        button(
            "Table",
            "write-table",
            "Ctrl+T: causes and checks as a table, or the text again",
            deeds::table);
    ofPage =
        List.of(
            button("Link …", "write-link", "Ctrl+K: puts a link to another page in", deeds::link),
            button(
                "Picture …",
                "write-picture",
                "Ctrl+Shift+P: copies a picture beside the pages and puts it in",
                deeds::picture),
            button("Read it", "write-read", "F4: goes to where it is read", deeds::read),
            button(
                "Rename …", "write-renaming", "F2: with every place that names it", deeds::rename),
            button("Record …", "write-record", "Keeps it in the history", deeds::record),
            button(
                "Drop changes",
                "write-drop",
                "Goes back to what is saved; undo takes that back",
                deeds::throwAway),
            button("Delete …", "write-delete", "Shows first what names it", deeds::delete),
            button("Close", "write-close", "Closes the page here", deeds::close));
    tools = new Tools("write-more", 8, List.of(save, table, pages, fresh), ofPage);
    add(title);
    add(state);
    add(tools);
  }

  private static JButton button(String text, String name, String tip, Runnable action) {
    return Buttons.plain(text, name, tip, action);
  }

  JComponent region() {
    return tools;
  }

  /** Shows the state of a page; empty where none is open. */
  void show(Optional<OpenPage> page, long others) {
    title.setText(page.map(OpenPage::title).orElse("Write"));
    state.setText(page.map(now -> words(now, others)).orElse(""));
    state.setVisible(page.isPresent());
    save.setEnabled(page.filter(OpenPage::isChanged).isPresent());
    Stream.of(ofPage).flatMap(List::stream).forEach(each -> each.setEnabled(page.isPresent()));
    tools.offer(ofPage, page.isPresent());
    save.setVisible(page.isPresent());
    table.setVisible(page.filter(now -> now.kind() == Kind.SYMPTOM).isPresent());
  }

  private static String words(OpenPage page, long others) {
    String saved =
        page.saved().isEmpty()
            ? "New, not saved yet"
            : page.isChanged() ? "Changed, not saved yet" : "Saved";
    return saved
        + " · "
        + page.path()
        + (page.clash().isPresent() ? " · Somebody else has changed its file: F7 shows both" : "")
        + (others == 0 ? "" : " · " + CountWords.of(others, "other page") + " not saved");
  }
}
