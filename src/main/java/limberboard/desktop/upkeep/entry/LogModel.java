package limberboard.desktop.upkeep.entry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import limberboard.boat.Boat;
import limberboard.boat.LogChange;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWriter.Outcome;
import limberboard.boat.LogWriter.Refused;
import limberboard.boat.LogWriter.Written;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.desktop.upkeep.entry.LogSteps.Step;

/**
 * Changes the chosen boat's log, and takes back and makes again what was changed since the window
 * was opened, step by step for each boat, without Swing. For the event thread only.
 */
public final class LogModel extends Observed {
  private final Session session;
  private final LogStore store;
  private final Background background;
  private final Map<String, LogSteps> steps = new HashMap<>();
  private final Map<String, Remark> remarks = new HashMap<>();
  private Runnable afterWriting = () -> {};
  private boolean busy;

  /**
   * A model.
   *
   * @param session tells library and boat
   * @param store where logs are kept
   * @param background writes them
   */
  public LogModel(Session session, LogStore store, Background background) {
    this.session = session;
    this.store = store;
    this.background = background;
    session.onChange(this::tell);
  }

  /**
   * What came of the last change.
   *
   * @param text in a sentence
   * @param lines one by one, what was changed, where the sentence only counts them
   * @param entries what was written, if anything was and still stands
   * @param failed whether it did not work
   */
  public record Remark(String text, List<String> lines, List<LogEntry> entries, boolean failed) {
    /** Copies the lists. */
    public Remark {
      lines = List.copyOf(lines);
      entries = List.copyOf(entries);
    }
  }

  /** Says what happens once a log has been changed: it is read anew. */
  public void afterWriting(Runnable action) {
    afterWriting = action;
  }

  /** What came of the last change of the chosen boat's log. */
  public Optional<Remark> remark() {
    return id().map(remarks::get);
  }

  /** Puts the remark away. */
  public void dismiss() {
    id().ifPresent(remarks::remove);
    tell();
  }

  /** Whether something is being written. */
  public boolean isBusy() {
    return busy;
  }

  /** What is taken back next, to follow “Undo”; empty when there is nothing. */
  public Optional<String> toUndo() {
    return id().map(steps::get).flatMap(LogSteps::toUndo).map(Step::what);
  }

  /** What is made again next, to follow “Redo”; empty when there is nothing. */
  public Optional<String> toRedo() {
    return id().map(steps::get).flatMap(LogSteps::toRedo).map(Step::what);
  }

  /**
   * Writes entries into the chosen boat's log, all of them or none.
   *
   * @param done is called when they have been written
   */
  public void add(List<LogEntry> entries, Runnable done) {
    EntryWords words = words();
    change(
        "writing " + words.named(entries),
        "Nothing was written into ",
        boat -> () -> store.add(boat, entries),
        whose -> "Written into " + whose + ": " + words.counted(entries) + ".",
        done);
  }

  /**
   * Corrects an entry of the chosen boat's log.
   *
   * @param done is called when it has been corrected
   */
  public void replace(LogEntry old, LogEntry now, Runnable done) {
    EntryWords words = words();
    change(
        "correcting " + words.named(List.of(old)),
        "Nothing was corrected in ",
        boat -> () -> store.replace(boat, old, now),
        whose -> "Corrected in " + whose + ": " + words.line(now) + ".",
        done);
  }

  /** Takes an entry out of the chosen boat's log. */
  public void remove(LogEntry entry) {
    EntryWords words = words();
    change(
        "deleting " + words.named(List.of(entry)),
        "Nothing was deleted from ",
        boat -> () -> store.remove(boat, entry),
        whose -> "Deleted from " + whose + ": " + words.line(entry) + ".",
        () -> {});
  }

  /** Takes the last change back that has not been taken back. */
  public void undo() {
    id().map(steps::get).ifPresent(all -> all.toUndo().ifPresent(step -> back(all, step, false)));
  }

  /** Makes the change again that was taken back last. */
  public void redo() {
    id().map(steps::get).ifPresent(all -> all.toRedo().ifPresent(step -> back(all, step, true)));
  }

  private interface Said {
    String of(String whose);
  }

  private interface Writing {
    Supplier<Outcome> on(String boat);
  }

  private void change(String what, String failed, Writing writing, Said said, Runnable done) {
    write(
        writing,
        failed,
        change -> {
          steps.computeIfAbsent(change.boat(), id -> new LogSteps()).did(new Step(change, what));
          remark(change, said.of(whose()));
          done.run();
        },
        () -> {});
  }

  private void back(LogSteps all, Step step, boolean again) {
    write(
        boat -> () -> store.takeBack(step.change()),
        (again ? "Not done again: " : "Not undone: ") + step.what() + " in ",
        change -> {
          if (again) {
            all.redid(change);
          } else {
            all.undid(change);
          }
          String how = again ? "Done again in " : "Undone in ";
          remark(change, how + whose() + ": " + step.what() + ".");
        },
        () -> giveUp(all, step));
  }

  /** A change whose lines are no longer there cannot be taken back; the one before it may be. */
  private void giveUp(LogSteps all, Step step) {
    List<LogEntry> log = session.boat().map(Boat::log).orElse(List.of());
    boolean gone =
        step.change().put().stream().anyMatch(put -> log.stream().noneMatch(put::saysTheSame));
    if (gone) {
      all.forget(step);
    }
  }

  private void write(
      Writing writing, String failed, Consumer<LogChange> written, Runnable notWritten) {
    Optional<String> boat = id();
    if (busy || boat.isEmpty()) {
      return;
    }
    String whose = whose();
    if (session.boat().filter(known -> !known.isEntered()).isPresent()) {
      String why = "she was not entered, so she has no log. Enter her under Boats first";
      remarks.put(boat.get(), new Remark(failed + whose + ": " + why, List.of(), List.of(), true));
      tell();
      return;
    }
    busy = true;
    remarks.remove(boat.get());
    tell();
    background.run(
        "Writing the log",
        () -> writing.on(boat.get()).get(),
        outcome -> {
          busy = false;
          if (outcome instanceof Written line) {
            written.accept(line.change());
            afterWriting.run();
          } else {
            String why = EntryWords.reason(((Refused) outcome).problem());
            remarks.put(
                boat.get(), new Remark(failed + whose + ": " + why, List.of(), List.of(), true));
            notWritten.run();
          }
          tell();
        },
        () -> busy = false);
  }

  private void remark(LogChange change, String text) {
    List<LogEntry> put = change.put();
    List<String> lines = put.size() > 1 ? put.stream().map(words()::line).toList() : List.of();
    remarks.put(change.boat(), new Remark(text, lines, put, false));
  }

  private String whose() {
    return session.boat().map(boat -> boat.name() + "’s log").orElse("the log");
  }

  private EntryWords words() {
    return new EntryWords(session.library());
  }

  private Optional<String> id() {
    return session.boat().map(Boat::id);
  }
}
