package limberboard.desktop.upkeep;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.AccessWays;
import limberboard.desktop.base.Wording;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sheet;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.Minutes;
import limberboard.library.Model.Access;
import limberboard.library.Skill;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;

/** The selected work in full, with what can be done about it: mark it done, read its page. */
final class DueDetails extends JPanel {
  private final transient DueModel model;
  private final Sheet sheet = new Sheet(10);
  private final Column facts = new Column(10);
  private final Column marking = new Column(10);
  private final Wrapped heading = Text.heading("");
  private final EntryFields fields;
  private final JButton mark;
  private final JButton page;
  private final JButton write;
  private transient Optional<Due> shown = Optional.empty();

  /**
   * Details.
   *
   * @param openPage opens a page
   */
  DueDetails(DueModel model, Consumer<String> openPage) {
    super(new BorderLayout());
    this.model = model;
    setOpaque(false);
    fields = new EntryFields("done", this::refresh, model::write, this::leave);
    mark = Buttons.main("Mark done …", this::open);
    mark.setName("mark-done");
    mark.setMnemonic('M');
    page =
        Buttons.plain(
            "Open the page", () -> model.selected().ifPresent(d -> openPage.accept(d.work().id())));
    page.setName("due-page");
    write = Buttons.main("Write into the log", model::write);
    write.setName("write-done");
    JButton cancel = Buttons.plain("Cancel", this::leave);
    cancel.setName("cancel-done");
    marking.add(heading);
    marking.add(fields);
    marking.add(Row.wrapping(10, write, cancel));
    sheet.add(facts);
    sheet.add(Row.wrapping(10, mark, page));
    sheet.add(marking);
    add(sheet.scrolling());
    model.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return sheet;
  }

  private void open() {
    model.mark();
    fields.focusFirst();
  }

  private void leave() {
    model.leave();
    mark.requestFocusInWindow();
  }

  private void refresh() {
    Optional<Due> selected = model.selected();
    sheet.setVisible(selected.isPresent());
    if (!selected.equals(shown)) {
      shown = selected;
      selected.ifPresent(this::fill);
    }
    Optional<EntryForm> form = model.form();
    marking.setVisible(form.isPresent());
    mark.setVisible(form.isEmpty());
    write.setEnabled(form.flatMap(EntryForm::entry).isPresent() && !model.isBusy());
    form.ifPresent(this::show);
    revalidate();
    repaint();
  }

  private void show(EntryForm form) {
    heading.setText(form.of().isPresent() ? "Looked at again" : "Mark it done");
    fields.show(form, model.boat().flatMap(Counted::lastHours));
  }

  private void fill(Due due) {
    DueWords words = new DueWords(model.upkeep().day());
    facts.removeAll();
    facts.add(Text.title(due.title()));
    model
        .upkeep()
        .upkeep()
        .map(upkeep -> upkeep.cautions(due.work()))
        .orElse(List.of())
        .forEach(caution -> facts.add(CautionBox.title(caution)));
    facts.add(Text.strong(words.state(due)));
    Form form = new Form(8);
    fact(form, "Why", words.why(due));
    fact(form, "When", words.plan(due) + ".");
    fact(form, "Takes", takes(due));
    fact(form, "Who", Wording.capital(Wording.who(due.work().details().skill())) + ".");
    due.work()
        .details()
        .lookFor()
        .ifPresent(
            look -> {
              fact(form, "Good", look.good());
              fact(form, "Bad", look.bad());
            });
    facts.add(form);
    if (due.work().details().skill() == Skill.LICENSED) {
      facts.add(
          Text.plain("Have it done, and mark it done here, so that it comes up again in time."));
    }
  }

  private String takes(Due due) {
    List<Access> access =
        model
            .upkeep()
            .upkeep()
            .map(Upkeep::fitting)
            .map(
                fitting ->
                    new AccessWays(fitting)
                        .toOpen(due.work().details().access(), java.util.Set.of()))
            .orElse(List.of());
    String first =
        access.stream()
            .map(open -> open.title() + " (" + Minutes.words(open.minutes()) + ")")
            .collect(Collectors.joining(", "));
    return Minutes.words(due.work().details().minutes())
        + (first.isEmpty() ? "." : ", and before it: " + first + ".");
  }

  private static void fact(Form form, String name, String value) {
    Wrapped text = Text.plain(value);
    form.line(name, text, text);
    text.getAccessibleContext().setAccessibleName(name + ": " + value);
  }
}
