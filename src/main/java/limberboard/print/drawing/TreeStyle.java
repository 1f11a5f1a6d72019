package limberboard.print.drawing;

/**
 * How a tree is drawn.
 *
 * @param box width of a box
 * @param gap from a box to the next column
 * @param size of the letters
 * @param brief whether a box says only what is done and how long it takes
 * @param levels how many forks deep it is drawn
 */
record TreeStyle(double box, double gap, double size, boolean brief, int levels) {
  /** The whole tree with everything there is to say. */
  static final TreeStyle WHOLE = new TreeStyle(270, 150, 13, false, Integer.MAX_VALUE);

  /** So many levels across a sheet of A4 at its natural size, in letters of 9 points. */
  static TreeStyle paper(int levels) {
    return new TreeStyle(146, 98, 12, true, levels);
  }
}
