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

  /**
   * The same rule for somebody who wants to know of its planning.
   *
   * @param planning called each time something is about to be weighed, on the thread that weighs
   */
  default Policy telling(Runnable planning) {
    return (model, now) -> {
      planning.run();
      return advise(model, now);
    };
  }
}
