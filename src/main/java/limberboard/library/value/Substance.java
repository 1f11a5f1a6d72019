package limberboard.library.value;

/** What things on a boat are made of, as far as it decides what may touch them. */
public enum Substance implements Word {
  /** Acrylic glazing. */
  ACRYLIC,
  /** Polycarbonate glazing, lamp covers and glands. */
  POLYCARBONATE,
  /** ABS housings and vents. */
  ABS,
  /** Aluminium above the water: masts, frames. */
  ALUMINIUM,
  /** Aluminium below the water: saildrives, legs of outboards. */
  ALUMINIUM_UNDER_WATER,
  /** Carbon laminate. */
  CARBON,
  /** Stainless steel. */
  STAINLESS,
  /** Copper, also as the poison in paint. */
  COPPER,
  /** The inside of a lead battery. */
  LEAD,
  /** The inside of a lithium battery. */
  LITHIUM
}
