package limberboard.desktop.upkeep.log;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.Counted;
import limberboard.desktop.upkeep.entry.EntryFields;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.entry.EntryForm.Field;
import limberboard.desktop.upkeep.entry.EntryWords;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.entry.UndoButtons;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.upkeep.Due;
import limberboard.words.DayText;

/**
 * Offers to write a mend into the boat's log, which plans the look again that its page asks for,
 * and then says where the work stands. Writes nothing unasked. What is half typed is kept for each
 * boat and mend. For the event thread only.
 */
public final class MendedEntry extends Column {
  private final transient UpkeepModel upkeep;
  private final transient LogModel log;
  private final transient Map<Key, EntryForm> forms = new HashMap<>();
  private final transient Map<Key, LogEntry> written = new HashMap<>();
  private final Wrapped words = Text.plain("");
  private final Wrapped plan = Text.plain("");
  private final EntryFields fields;
  private final Row buttons;
  private final JButton write;
  private final UndoButtons undo;
  private transient Optional<Mend> mend = Optional.empty();

  /**
   * What was mended.
   *
   * @param work the mend's procedure
   * @param note what to remember, to be read over before it is written
   */
  public record Mend(String work, String note) {}

  /** What is written of: one kind of work on one boat. */
  private record Key(String boat, String work) {}

  /** Nothing to be written yet. */
  public MendedEntry(UpkeepModel upkeep, LogModel log) {
    super(8);
    this.upkeep = upkeep;
    this.log = log;
    words.setName("mended-words");
    plan.setName("mended-plan");
    write = Buttons.main("Write into the log", "write-mended", this::write);
    fields = new EntryFields("mended", this::refresh, write::requestFocusInWindow, () -> {});
    undo = new UndoButtons("-mended", log, () -> {});
    buttons = Row.wrapping(10, write, undo.undo());
    add(Text.caption("In the log"));
    add(words);
    add(fields);
    add(plan);
    add(buttons);
    upkeep.onChange(this::refresh);
    log.onChange(this::refresh);
  }

  /** Offers to write this mend; empty when it is not known what was done. */
  public void offer(Optional<Mend> other) {
    if (!other.equals(mend)) {
      mend = other;
      key().ifPresent(written::remove);
      key().ifPresent(forms::remove);
    }
    refresh();
  }

  /** What is filled in first; empty while nothing can be written. */
  public Optional<JComponent> first() {
    return fields.isVisible() ? fields.first() : Optional.empty();
  }

  private Optional<Key> key() {
    return upkeep.boat().flatMap(boat -> mend.map(done -> new Key(boat.id(), done.work())));
  }

  private Optional<Page<Procedure>> page() {
    return mend.flatMap(done -> upkeep.library().procedure(done.work()));
  }

  private Optional<EntryForm> form() {
    return key().map(key -> forms.computeIfAbsent(key, id -> newForm()));
  }

  private EntryForm newForm() {
    Boat boat = upkeep.boat().orElseThrow();
    List<String> uses = Counted.uses(boat, page().flatMap(found -> found.details().interval()));
    return new EntryForm(mend.orElseThrow().work(), Optional.empty(), upkeep.today(), uses)
        .noting(mend.orElseThrow().note());
  }

  private void write() {
    Optional<LogEntry> entry = form().flatMap(EntryForm::entry);
    if (entry.isPresent()) {
      Key key = key().orElseThrow();
      log.add(
          List.of(entry.get()),
          () -> {
            written.put(key, entry.get());
            forms.remove(key);
            Later.focus(undo.undo());
          });
    }
  }

  /** What was written and still stands in the log. */
  private Optional<LogEntry> standing() {
    return key()
        .map(written::get)
        .filter(
            entry ->
                upkeep.boat().stream()
                    .flatMap(boat -> boat.log().stream())
                    .anyMatch(entry::saysTheSame));
  }

  private void refresh() {
    Optional<String> why = whyNot();
    Optional<LogEntry> standing = why.isPresent() ? Optional.empty() : standing();
    boolean offered = why.isEmpty() && standing.isEmpty();
    fields.setVisible(offered);
    write.setVisible(offered);
    buttons.setVisible(why.isEmpty());
    undo.undo().setVisible(standing.isPresent() && log.toUndo().isPresent());
    plan.setVisible(offered);
    words.setText(why.orElseGet(() -> standing.map(this::stands).orElseGet(this::offerWords)));
    if (offered) {
      EntryForm form = form().orElseThrow();
      fields.show(form, upkeep.boat().flatMap(Counted::lastHours));
      write.setEnabled(form.entry().isPresent());
      plan.setText(planned(form));
    }
    revalidate();
    repaint();
  }

  private String offerWords() {
    String failed =
        log.remark().filter(LogModel.Remark::failed).map(LogModel.Remark::text).orElse("");
    String name = upkeep.boat().map(Boat::name).orElse("");
    return failed.isEmpty()
        ? "Nothing is written unless you say so. This would go into " + name + "’s log:"
        : failed;
  }

  private Optional<String> whyNot() {
    if (upkeep.boat().isEmpty()) {
      return Optional.of("No boat is chosen, so there is no log to write into.");
    } else if (!upkeep.boat().get().isEntered()) {
      return Optional.of(
          "This boat was not entered, so she has no log to write into and nothing can be planned"
              + " for her. Enter her under Boats, and log the mend under Upkeep.");
    } else if (mend.isEmpty() || page().isEmpty()) {
      return Optional.of("What mended it is not known here. Log what was done under Upkeep, Log.");
    }
    return Optional.empty();
  }

  /** What writing it plans. */
  private String planned(EntryForm form) {
    Optional<LocalDate> done = new DayText(upkeep.today()).read(form.text(Field.DAY)).day();
    return page()
        .flatMap(found -> found.details().lookAgain())
        .flatMap(
            look ->
                done.map(
                    day ->
                        "Writing it also plans the look again for "
                            + DayText.written(day.plus(look.after()))
                            + look.with()
                                .flatMap(upkeep.library()::procedure)
                                .map(with -> ": " + with.title())
                                .orElse("")
                            + "."))
        .orElse("The page asks for no look again.");
  }

  /** Where the work stands once it is written. */
  private String stands(LogEntry entry) {
    StringBuilder text = new StringBuilder("Written: ");
    text.append(new EntryWords(upkeep.library()).line(entry)).append('.');
    upkeep
        .upkeep()
        .filter(known -> known.fitting().boat().log().stream().anyMatch(entry::saysTheSame))
        .ifPresent(
            known -> {
              for (Due due : known.all()) {
                if (due.runsOut().isPresent() && due.which().procedure().equals(entry.work())) {
                  text.append(due.isLookAgain() ? " Look again by " : " It comes next by ")
                      .append(DayText.written(due.runsOut().get()))
                      .append('.');
                }
              }
            });
    return text.toString();
  }
}
