package limberboard.boat;

import java.util.List;

/** The columns of a boat's log. */
public final class LogWords {
  static final String DATE = "date";
  static final String WORK = "work";
  static final String ENGINE_HOURS = "engine-hours";
  static final String NOTE = "note";
  static final String OF = "of";
  static final String KNOWN_BY = "known-by";

  /** The columns that every log has, in the order in which a new file has them. */
  static final List<String> COLUMNS = List.of(DATE, WORK, ENGINE_HOURS, NOTE);

  private LogWords() {}

  /**
   * Whether a column counts uses, which is what every column does that has no meaning of its own.
   */
  static boolean countsUses(String column) {
    return !COLUMNS.contains(column) && !isNamed(column);
  }

  /** Whether a column that not every log has has a meaning of its own. */
  static boolean isNamed(String column) {
    return column.equals(OF) || column.equals(KNOWN_BY);
  }
}
