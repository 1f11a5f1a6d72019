package limberboard.desktop.find;

import limberboard.desktop.parts.Card;

/**
 * Something that was found.
 *
 * @param target what it is
 * @param card how it is shown
 */
public record Found(Target target, Card card) {

  /** What was found. */
  public sealed interface Target {
    /** Its id. */
    String id();
  }

  /**
   * A page other than a symptom.
   *
   * @param id the page's id
   */
  public record PageTarget(String id) implements Target {}

  /**
   * A symptom.
   *
   * @param id the page's id
   * @param fits whether it can be traced on the chosen boat
   */
  public record SymptomTarget(String id, boolean fits) implements Target {}

  /**
   * A boat.
   *
   * @param id the boat's id
   */
  public record BoatTarget(String id) implements Target {}

  /**
   * A boat of which the text speaks beside something else: choosing her leaves what was found.
   *
   * @param id the boat's id
   */
  public record MentionedBoat(String id) implements Target {}
}
