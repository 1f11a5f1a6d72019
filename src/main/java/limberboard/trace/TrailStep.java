package limberboard.trace;

/** One thing done in a trace. */
public sealed interface TrailStep {
  /** The check's id, or the cause's for a mend. */
  String id();

  /** Whether the two are about the same check, its being made safe, or the same mend. */
  default boolean sameAs(TrailStep other) {
    return id().equals(other.id())
        && (this instanceof MendFailed) == (other instanceof MendFailed)
        && (this instanceof MadeSafe) == (other instanceof MadeSafe);
  }

  /**
   * A check that gave an answer.
   *
   * @param id the check
   * @param answer the answer
   */
  record Answered(String id, String answer) implements TrailStep {}

  /**
   * A check that could not be told: it changes no chance and is not proposed again.
   *
   * @param id the check
   */
  record CouldNotTell(String id) implements TrailStep {}

  /**
   * What a check that comes first asks for was made safe; it changes no chance.
   *
   * @param id the check
   */
  record MadeSafe(String id) implements TrailStep {}

  /**
   * A mend that was tried and did not cure.
   *
   * @param id the cause
   */
  record MendFailed(String id) implements TrailStep {}
}
