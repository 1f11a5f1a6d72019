package limberboard.boat;

import java.util.List;

/** The words of a boat's log besides the ids of procedures. */
public final class LogWords {
  /** The boat went afloat. */
  public static final String LAUNCHED = "launched";

  /** The boat came ashore. */
  public static final String HAULED_OUT = "hauled-out";

  /** The mast was stepped. */
  public static final String MAST_UP = "mast-up";

  /** The mast was taken down. */
  public static final String MAST_DOWN = "mast-down";

  /** Only a meter was read or uses were counted. */
  public static final String READING = "reading";

  /** The hour meter was replaced; its reading, 0 if none is given, is that of the new one. */
  public static final String NEW_METER = "new-meter";

  /** Work done earlier was looked at again; the column {@code of} says which. */
  public static final String LOOKED_AGAIN = "looked-again";

  /** All events. */
  public static final List<String> EVENTS =
      List.of(LAUNCHED, HAULED_OUT, MAST_UP, MAST_DOWN, READING, NEW_METER, LOOKED_AGAIN);

  static final String DATE = "date";
  static final String WORK = "work";
  static final String ENGINE_HOURS = "engine-hours";
  static final String NOTE = "note";
  static final String OF = "of";

  /** The columns that every log has, in the order in which a new file has them. */
  static final List<String> COLUMNS = List.of(DATE, WORK, ENGINE_HOURS, NOTE);

  private LogWords() {}

  /**
   * Whether a column counts uses, which is what every column does that has no meaning of its own.
   */
  static boolean countsUses(String column) {
    return !COLUMNS.contains(column) && !column.equals(OF);
  }
}
