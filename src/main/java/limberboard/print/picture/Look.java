package limberboard.print.picture;

/** How a page is coloured. */
public enum Look {
  /** Ink on off-white, for the screen. */
  LIGHT,
  /** Light ink on a dark ground, for the screen. */
  DARK,
  /** Ink on white paper; links are not shown as links. */
  PAPER
}
