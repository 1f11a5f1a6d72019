package limberboard.library.value;

/** How much sun, wind and swell a boat takes where she lies. */
public enum Exposure implements Word {
  /** Under a cover, up a creek or in a shed-like berth. */
  SHELTERED,
  /** As most boats lie. */
  USUAL,
  /** Open to weather and swell, or always in strong sun. */
  EXPOSED
}
