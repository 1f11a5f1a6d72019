package limberboard.desktop.tree;

/**
 * How large a tree is shown.
 *
 * @param factor 1 for the usual size
 */
record Zoom(double factor) {
  static final Zoom USUAL = new Zoom(1);
  private static final double LEAST = 0.002;
  private static final double MOST = 3;
  private static final double STEP = 1.2;
  private static final int PER_CENT = 100;

  /** About six pixels for a letter of thirteen. */
  private static final double LEAST_READ = 0.45;

  Zoom {
    factor = Math.max(LEAST, Math.min(MOST, factor));
  }

  /** Larger by so many steps; smaller when negative. */
  Zoom by(double steps) {
    return new Zoom(factor * Math.pow(STEP, steps));
  }

  /** Just small enough for something to fit, and not larger than usual. */
  static Zoom fitting(double width, double height, double roomWidth, double roomHeight) {
    return new Zoom(Math.min(1, Math.min(roomWidth / width, roomHeight / height)));
  }

  /** In words, and whether anything can be read at it. */
  String words() {
    String share = factor * PER_CENT < 1 ? "under 1 %" : Math.round(factor * PER_CENT) + " %";
    return factor < LEAST_READ ? share + ", too small to read" : share;
  }
}
