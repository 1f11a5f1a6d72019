package limberboard.library;

/** What a material's amounts are counted in. */
public enum CountingUnit implements Word {
  /** Millilitres. */
  ML,
  /** Grams. */
  G,
  /** Metres. */
  M,
  /** Pieces. */
  PIECE
}
