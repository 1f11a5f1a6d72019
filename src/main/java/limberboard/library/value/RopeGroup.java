package limberboard.library.value;

/** The parts of a list of ropes, in its order. */
public enum RopeGroup implements Word {
  /** They hoist sails and spars. */
  HALYARD("Halyards and lifts"),
  /** They hold the clews. */
  SHEET("Sheets"),
  /** They shape the sails. */
  CONTROL("Sail controls"),
  /** They make sails smaller. */
  REEFING("Reefing and furling"),
  /** They move what is under the boat or behind it. */
  LIFTING("Keel, rudder and outboard"),
  /** They hold something in its place. */
  TIE("Ties and lashings"),
  /** They hold the boat. */
  MOORING("Mooring and fenders");

  private final String title;

  RopeGroup(String title) {
    this.title = title;
  }

  /** The heading on a list. */
  public String title() {
    return title;
  }
}
