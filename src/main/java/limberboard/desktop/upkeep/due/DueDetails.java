package limberboard.desktop.upkeep.due;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.boat.AccessWays;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.Counted;
import limberboard.desktop.upkeep.entry.EntryFields;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.state.DueLine;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Skill;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.words.AccessWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/**
 * The selected work in full, with what can be done about it: mark it done, read its page. The
 * buttons stay in sight while the rest scrolls, and the form scrolls to where one types.
 */
public final class DueDetails extends Docked {
  private final transient DueModel model;
  private final RaisedColumn sheet = new RaisedColumn(10);
  private final Column facts = new Column(10);
  private final Column marking = new Column(10);
  private final Wrapped heading = Text.heading("");
  private final Wrapped hint = Text.quiet("");
  private final EntryFields fields;
  private final JButton mark;
  private final Row reading;
  private final Row writing;
  private final JButton write;
  private transient Optional<DueLine> shown = Optional.empty();

  /**
   * Details.
   *
   * @param openPage opens a page
   */
  public DueDetails(DueModel model, Consumer<String> openPage) {
    super(8);
    this.model = model;
    fields = new EntryFields("done", this::refresh, model::write, this::leave);
    mark = Buttons.main("Mark done …", "mark-done", this::open);
    mark.setMnemonic('M');
    JButton page =
        Buttons.plain(
            "Open the page",
            "due-page",
            () -> model.selected().ifPresent(d -> openPage.accept(d.work().id())));
    write = Buttons.main("Write into the log", "write-done", model::write);
    JButton cancel = Buttons.plain("Cancel", "cancel-done", this::leave);
    reading = Row.wrapping(10, mark, page);
    writing = Row.wrapping(10, write, cancel);
    marking.add(heading);
    marking.add(hint);
    marking.add(fields);
    sheet.add(facts);
    sheet.add(marking);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(reading);
    foot.add(writing);
    dock(sheet, foot);
    model.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return sheet;
  }

  /** Puts the focus into the form, scrolled into sight. */
  public void focusForm() {
    Later.show(marking);
    fields.focusFirst();
  }

  private void open() {
    model.mark();
    focusForm();
  }

  private void leave() {
    model.leave();
    mark.requestFocusInWindow();
  }

  private void refresh() {
    Optional<DueLine> selected = model.selectedLine();
    if (!selected.equals(shown)) {
      shown = selected;
      selected.ifPresent(this::fill);
    }
    Optional<EntryForm> form = model.form();
    boolean several = form.filter(open -> open.doings().size() > 1).isPresent();
    sheet.setVisible(selected.isPresent() || form.isPresent());
    facts.setVisible(!several);
    marking.setVisible(form.isPresent());
    reading.setVisible(form.isEmpty() && selected.isPresent());
    writing.setVisible(form.isPresent());
    write.setEnabled(form.flatMap(EntryForm::entry).isPresent());
    form.ifPresent(this::show);
    revalidate();
    repaint();
  }

  private void show(EntryForm form) {
    int count = form.doings().size();
    heading.setText(
        count > 1
            ? "Mark " + count + " pieces of work done"
            : form.of().isPresent() ? "Looked at again" : "Mark it done");
    hint.setText(
        count > 1
            ? "All on one day. Hours are written with each; what was counted, with the first."
                + " A note can go with each."
            : "");
    hint.setVisible(count > 1);
    fields.show(form, model.boat().flatMap(Counted::lastHours));
  }

  private void fill(DueLine line) {
    Due due = line.due();
    facts.removeAll();
    facts.add(Text.title(due.title()));
    List<WorkCaution> cautions =
        model.upkeep().upkeep().map(upkeep -> upkeep.cautions(due.work())).orElse(List.of());
    if (!cautions.isEmpty()) {
      facts.add(CautionBox.names(cautions, WorkCaution::because));
    }
    facts.add(Text.strong(line.state()));
    Form form = new Form(8);
    fact(form, "Why", line.why());
    fact(form, "When", line.when() + ".");
    fact(form, "Takes", takes(due));
    fact(form, "Who", Sentences.capital(SkillWords.of(due.skill())) + ".");
    due.work()
        .details()
        .lookFor()
        .ifPresent(
            look -> {
              fact(form, "Good", look.good());
              fact(form, "Bad", look.bad());
            });
    facts.add(form);
    if (due.skill() == Skill.LICENSED) {
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
            .map(fitting -> new AccessWays(fitting).toOpen(due.work().details().access(), Set.of()))
            .orElse(List.of());
    String first = access.stream().map(AccessWords::of).collect(Collectors.joining(", "));
    int minutes = due.all().stream().mapToInt(Due::ownerMinutes).sum();
    return Minutes.forWhom(minutes) + (first.isEmpty() ? "." : ", and before it: " + first + ".");
  }

  private static void fact(Form form, String name, String value) {
    Wrapped text = Text.plain(value);
    form.line(name, text, text);
    text.getAccessibleContext().setAccessibleName(name + ": " + value);
  }
}
