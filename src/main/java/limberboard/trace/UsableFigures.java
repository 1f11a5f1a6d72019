package limberboard.trace;

/**
 * Makes do with figures of a page that cannot be right. They have been reported when the page was
 * read; here they must not stop the rest of the page.
 */
final class UsableFigures {
  private static final double MOST = 1e6;

  private UsableFigures() {}

  /** A weight, factor or number of minutes above 0; 1 for what is none. */
  static double positive(double figure) {
    return figure > 0 ? Math.min(figure, MOST) : 1;
  }

  /** A number of minutes of 0 or more; 0 for what is none. */
  static double orNone(double figure) {
    return figure > 0 ? Math.min(figure, MOST) : 0;
  }
}
