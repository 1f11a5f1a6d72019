package limberboard.desktop.upkeep;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.LogEntry;
import limberboard.desktop.upkeep.state.DueWords;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.upkeep.Due;

/**
 * What is known of one piece of work on the chosen boat, for somebody who reads its page: when it
 * is due and why, and when it was last done. It is worked out with everything that is due, off the
 * event thread, and only looked up here. For the event thread only.
 */
public final class WorkNotes {
  private final UpkeepModel model;

  /**
   * What is known.
   *
   * @param model works out what is due
   */
  public WorkNotes(UpkeepModel model) {
    this.model = model;
  }

  /**
   * When work is due.
   *
   * @param state when, in words
   * @param plan when to do it
   * @param why the reason, as a sentence
   * @param now whether it is overdue
   */
  public record Note(String state, String plan, String why, boolean now) {}

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    model.onChange(listener);
  }

  /** Whether it is being worked out. */
  public boolean isWorking() {
    return model.state() == UpkeepModel.State.WORKING;
  }

  /** When the work of a page is due, and looking again after it; nothing when it never is. */
  public List<Note> due(String page) {
    DueWords words = new DueWords(model.day());
    return model.upkeep().map(known -> known.all()).orElse(List.of()).stream()
        .filter(due -> isOf(due, page))
        .map(due -> note(words, due))
        .toList();
  }

  private static boolean isOf(Due due, String page) {
    return due.after().map(work -> work.id().equals(page)).orElse(due.work().id().equals(page));
  }

  private static Note note(DueWords words, Due due) {
    String again = due.isLookAgain() ? "Look again: " : "";
    return new Note(
        again + words.state(due), words.plan(due), words.why(due), due.isOver(words.on()));
  }

  /** When the work of a page was last done, by the log: the day, and the note beside it. */
  public Optional<String> lastDone(String page) {
    return model
        .boat()
        .flatMap(
            boat ->
                boat.log().stream()
                    .filter(entry -> entry.work().equals(page))
                    .max(Comparator.comparing(LogEntry::date)))
        .map(WorkNotes::worded);
  }

  private static String worded(LogEntry entry) {
    String how = entry.known().map(known -> ", " + known.from().sentence()).orElse("");
    return entry.day() + how + (entry.note().isBlank() ? "" : " (" + entry.note() + ")");
  }
}
