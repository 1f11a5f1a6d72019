package limberboard.sharing;

/** Is told how far sharing has come, and may stop it. Called on the thread that shares. */
public interface HowFar {
  /**
   * How far it is.
   *
   * @param what what is being done, such as {@code Receiving}
   * @param done how much of it is done
   * @param total how much there is; 0 when that is not known
   */
  void step(String what, int done, int total);

  /** Whether to stop; what has been written by then stays, and nothing is half done. */
  default boolean isStopped() {
    return false;
  }

  /** Tells nobody, and goes on. */
  static HowFar silent() {
    return (what, done, total) -> {};
  }
}
