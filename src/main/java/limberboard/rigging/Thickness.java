package limberboard.rigging;

/** The diameter of a rope. */
public sealed interface Thickness {

  /**
   * It is known.
   *
   * @param millimetres nominal diameter
   * @param breaking what a new rope of this kind breaks at, in newtons
   * @param needed what it has to break at, in newtons; 0 when the page states the diameter
   * @param working how it was chosen
   */
  record Chosen(double millimetres, double breaking, double needed, String working)
      implements Thickness {}

  /**
   * It cannot be chosen.
   *
   * @param why a sentence for the owner
   */
  record Open(String why) implements Thickness {}
}
