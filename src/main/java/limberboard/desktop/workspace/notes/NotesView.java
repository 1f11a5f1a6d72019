package limberboard.desktop.workspace.notes;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.boat.Boat;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PlaceTools;
import limberboard.library.page.Page;
import limberboard.notes.QuickNote;
import limberboard.words.CountWords;
import limberboard.words.DayText;

/** The notes that wait to be worked in, and those that are done. */
public final class NotesView implements View {
  private static final int LEAST = 760;
  private static final int SHORT = 90;
  private final NotesModel model;
  private final PlaceTools tools;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final CardList<QuickNote> list;
  private final Wrapped told = Text.quiet("");
  private final Wrapped about = Text.quiet("");
  private final Wrapped text = Text.reading("");
  private final JToggleButton done = new JToggleButton("Show those done");
  private final JButton note;
  private final JButton workedIn;
  private final JButton dropped;
  private final JButton again;
  private final JButton read;
  private final JButton photo;

  /**
   * A view of the model.
   *
   * @param ask asks for a note
   */
  public NotesView(NotesModel model, PlaceTools tools, Runnable ask) {
    this.model = model;
    this.tools = tools;
    list = new CardList<QuickNote>("Notes", this::card).onChoose(this::goTo);
    list.setName("notes");
    list.addListSelectionListener(e -> showSelected());
    note = Buttons.main("A quick note …", "notes-add", ask);
    workedIn = ending("Worked in", "notes-worked-in", QuickNote.How.WORKED_IN);
    dropped = ending("Drop it", "notes-drop", QuickNote.How.DROPPED);
    again = onSelected("Let it wait again", "notes-again", model::resume);
    photo = onSelected("Open the photo", "notes-photo", model::openPhoto);
    read =
        onSelected(
            "Read the page",
            "notes-page",
            each -> each.page().ifPresent(tools.navigator()::openPage));
    done.setName("notes-done");
    done.addActionListener(e -> model.showDone(done.isSelected()));
    Keys.focused(done, "ENTER", done::doClick);
    panel.setOpaque(false);
    panel.add(
        new Sides(
            LEAST, "Notes", left(), "Note", right(), "workspace-notes", 0.45, tools.dividers()));
    model.onChange(this::refresh);
    When.showing(
        panel,
        () -> {
          if (panel.isShowing()) {
            model.look();
          }
        });
    refresh();
  }

  private JButton ending(String words, String name, QuickNote.How how) {
    return onSelected(words, name, each -> model.end(each, how));
  }

  private JButton onSelected(String words, String name, Consumer<QuickNote> action) {
    return Buttons.plain(words, name, () -> list.selected().ifPresent(action));
  }

  private JComponent left() {
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    left.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 8));
    Column above = new Column(6).padded(0, 6, 4, 6);
    above.add(Text.title("Notes"));
    above.add(told);
    above.add(Row.wrapping(8, note, done));
    left.add(above, BorderLayout.NORTH);
    left.add(list.scrolling(), BorderLayout.CENTER);
    return left;
  }

  private JComponent right() {
    Column column = new Column(10).padded(4, 12, 10, 8).atMost(680);
    column.add(about);
    column.add(text);
    column.add(Row.wrapping(8, workedIn, dropped, again, read, photo));
    return column.scrolling();
  }

  private void goTo(QuickNote chosen) {
    Sides.goTo(chosen.page().isPresent() ? read : model.isDoneShown() ? again : workedIn);
  }

  private Card card(QuickNote each) {
    String first = each.text().lines().findFirst().orElse("A photo");
    String title =
        first.length() > SHORT ? first.substring(0, SHORT).stripTrailing() + " …" : first;
    return Card.of(title.isBlank() ? "A photo" : title, "").noting(about(each));
  }

  private String about(QuickNote each) {
    StringBuilder words = new StringBuilder(DayText.written(each.written().toLocalDate()));
    each.page()
        .ifPresent(
            id ->
                words
                    .append(", on “")
                    .append(tools.session().library().page(id).map(Page::title).orElse(id))
                    .append("”"));
    each.boat()
        .ifPresent(
            id ->
                words
                    .append(", ")
                    .append(tools.session().workspace().boat(id).map(Boat::name).orElse(id)));
    each.picture().ifPresent(name -> words.append(", with a photo"));
    each.end()
        .ifPresent(
            end ->
                words
                    .append(
                        end.how() == QuickNote.How.DROPPED ? "; dropped on " : "; worked in on ")
                    .append(DayText.written(end.day())));
    return words.toString();
  }

  private void showSelected() {
    Optional<QuickNote> each = list.selected();
    about.setText(each.map(this::about).orElse(""));
    text.setText(each.map(QuickNote::text).orElse(""));
    boolean waits = each.isPresent() && !model.isDoneShown();
    workedIn.setVisible(waits);
    dropped.setVisible(waits);
    again.setVisible(each.isPresent() && model.isDoneShown());
    read.setVisible(each.flatMap(QuickNote::page).isPresent());
    photo.setVisible(each.flatMap(QuickNote::picture).isPresent());
    panel.revalidate();
    panel.repaint();
  }

  private void refresh() {
    List<QuickNote> notes = model.notes();
    if (!notes.equals(list.entries())) {
      boolean lost = workedIn.isFocusOwner() || dropped.isFocusOwner() || again.isFocusOwner();
      list.show(notes);
      if (list.selected().isEmpty() && !notes.isEmpty()) {
        list.setSelectedIndex(0);
      }
      if (lost) {
        list.requestFocusInWindow();
      }
    }
    told.setText(
        model.isDoneShown()
            ? CountWords.of(notes.size(), "note") + " done, the latest first."
            : notes.isEmpty()
                ? "No note waits. Ctrl+J takes one, from anywhere."
                : CountWords.of(notes.size(), "note")
                    + (notes.size() == 1 ? " waits" : " wait")
                    + " to be worked in. Ctrl+J takes another, from anywhere.");
    showSelected();
  }

  @Override
  public Name name() {
    return new Name("notes", "Notes", 'N');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return model.notes().isEmpty() ? List.of(note) : List.of(list, note);
  }
}
