package limberboard.desktop.boats;

/** The fields of the form that are typed or chosen. */
public enum Field {
  /** What the boat is called. */
  NAME("Name"),
  /** Its model. */
  MODEL("Model"),
  /** Its hull number. */
  HULL("Hull number"),
  /** The year it was built in. */
  BUILT("Built in"),
  /** The day it first went afloat. */
  LAUNCHED("Launched on"),
  /** The day its owner bought it from another. */
  BOUGHT("Bought on"),
  /** What it is used for. */
  USE("Used for"),
  /** Where it lies. */
  WATER("Lies in"),
  /** How much weather she takes there. */
  EXPOSURE("Berth is"),
  /** From when in the year it is afloat. */
  SEASON_FROM("Afloat from"),
  /** Until when in the year it is afloat. */
  SEASON_TO("Afloat until"),
  /** Anything else. */
  NOTE("Note");

  private final String label;

  Field(String label) {
    this.label = label;
  }

  /** What stands before the field. */
  public String label() {
    return label;
  }
}
