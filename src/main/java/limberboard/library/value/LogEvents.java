package limberboard.library.value;

import java.util.List;

/** The words that stand in a boat's log in the place of a procedure's id: what happened to her. */
public final class LogEvents {
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

  /** All of them. */
  public static final List<String> ALL =
      List.of(LAUNCHED, HAULED_OUT, MAST_UP, MAST_DOWN, READING, NEW_METER, LOOKED_AGAIN);

  /** Those from which an interval can run: something is otherwise from then on. */
  public static final List<String> TURNS =
      List.of(LAUNCHED, HAULED_OUT, MAST_UP, MAST_DOWN, NEW_METER);

  private LogEvents() {}
}
