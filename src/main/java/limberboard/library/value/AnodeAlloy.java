package limberboard.library.value;

/** Alloys of sacrificial anodes, from the least to the most active. */
public enum AnodeAlloy implements Word {
  /** Zinc. */
  ZINC,
  /** Aluminium with zinc and indium. */
  ALUMINIUM,
  /** Magnesium. */
  MAGNESIUM
}
