package limberboard.upkeep;

import java.time.LocalDate;
import java.util.function.Function;
import limberboard.words.PhaseWords;

/**
 * When work is due and when it is best done, in words.
 *
 * @param due the work
 * @param on the day it is seen from
 */
public record WhenDue(Due due, LocalDate on) {

  /**
   * When it runs out: {@code Was due by 12 March 2026}.
   *
   * @param written how a day is written
   */
  public String state(Function<LocalDate, String> written) {
    if (due.lastDay().isEmpty()) {
      return due.isKnown() ? "No day known" : "Not known";
    }
    LocalDate day = due.lastDay().get();
    String about = due.estimated() ? "about " : "";
    if (day.isEqual(on)) {
      return "Due today";
    }
    return (day.isBefore(on) ? "Was due by " : "Due by ") + about + written.apply(day);
  }

  /**
   * When to do it, and in which part of the year.
   *
   * @param written how a day is written
   */
  public String plan(Function<LocalDate, String> written) {
    String where = due.phase().map(phase -> ", " + PhaseWords.of(phase)).orElse("");
    return due.plan().isAfter(on)
        ? "Plan it for " + written.apply(due.plan()) + where
        : "Do it now" + where;
  }
}
