package limberboard.desktop.upkeep.state;

/**
 * A rope of a boat's list that somebody chose.
 *
 * @param id its id on the list
 * @param title what it was called when it was chosen, for when it is gone
 */
public record AskedRope(String id, String title) {}
