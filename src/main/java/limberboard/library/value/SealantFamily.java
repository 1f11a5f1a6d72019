package limberboard.library.value;

/** Sealants by what they are made of, which decides what they stick to and what stops them. */
public enum SealantFamily implements Word {
  /** Polyurethane. */
  POLYURETHANE,
  /** Polysulphide. */
  POLYSULPHIDE,
  /** Silicone. */
  SILICONE,
  /** Hybrid: silane-modified polymer. */
  HYBRID,
  /** Butyl, which never sets. */
  BUTYL
}
