package limberboard.boat;

/** Whether something is for a boat, with the reason. */
public sealed interface Fit {
  /** A sentence fragment for the owner: "built 2014, before 2016"; empty when nothing was asked. */
  String reason();

  /** Whether it fits. */
  default boolean fits() {
    return this instanceof Yes;
  }

  /**
   * It fits.
   *
   * @param reason why, or empty for what fits every boat
   */
  record Yes(String reason) implements Fit {}

  /**
   * It does not fit.
   *
   * @param reason why not
   */
  record No(String reason) implements Fit {}
}
