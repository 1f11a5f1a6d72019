package limberboard.effort;

/**
 * A rule for what to do next. Implementations are stateless and may be shared between threads; they
 * may be exchanged without touching what follows them.
 */
@FunctionalInterface
public interface Policy {
  /**
   * Weighs everything that can be done now.
   *
   * @param model what checks, mends and the yard cost
   * @param now how far the trace has come
   */
  Advice advise(EffortModel model, Situation now);
}
