package limberboard.library.value;

/** The shelves of a chandlery. */
public enum MaterialGroup implements Word {
  /** Sealants and bedding tapes. */
  SEALANT,
  /** Resins and glues. */
  ADHESIVE,
  /** Ropes and cords. */
  CORDAGE,
  /** Oils. */
  OIL,
  /** Greases and pastes. */
  GREASE,
  /** Cleaners, solvents, rinses. */
  CLEANER,
  /** Paints and varnishes. */
  COATING,
  /** Screws, pins, washers, clips. */
  FASTENER,
  /** Sacrificial anodes. */
  ANODE,
  /** Electrical parts. */
  ELECTRICAL,
  /** Fuels and their additives. */
  FUEL,
  /** Gaskets, seals and packings. */
  SEAL,
  /** Other spare parts. */
  SPARE,
  /** Tapes. */
  TAPE,
  /** Abrasives. */
  ABRASIVE,
  /** Worked with, not used up. */
  TOOL;

  /** Whether what is counted in metres on this shelf is cut in pieces that must be whole. */
  public boolean isCutInPieces() {
    return this == CORDAGE || this == SPARE || this == ELECTRICAL || this == SEAL;
  }
}
