package limberboard.library.value;

/** The parts of a boat that pages are filed under. */
public enum BoatSystem implements Word {
  /** Hull and underwater body. */
  HULL,
  /** Deck, hatches and fittings. */
  DECK,
  /** Keel, centreboard and what lifts them. */
  KEEL,
  /** Rudders, tiller, wheel and what joins them. */
  STEERING,
  /** Mast, boom, standing rigging. */
  RIG,
  /** Ropes, blocks and clutches. */
  RUNNING_RIGGING,
  /** Inboard diesel with its drive. */
  ENGINE,
  /** Outboard engine. */
  OUTBOARD,
  /** Batteries, wiring, lights. */
  ELECTRICS,
  /** Fresh water, toilet, through-hulls and pumps. */
  PLUMBING,
  /** Cooking gas. */
  GAS,
  /** Linings, berths, stowage. */
  INTERIOR,
  /** Safety gear. */
  SAFETY,
  /** Road trailer. */
  TRAILER
}
