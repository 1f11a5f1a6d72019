package limberboard.library.page;

import java.util.Optional;
import limberboard.library.value.Amount;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.RopePull;

/**
 * The load on a rope. Either {@code by} or {@code force} is given.
 *
 * @param by what pulls on it; needs {@code beaufort}
 * @param force a stated pull
 * @param beaufort apparent wind up to which it is used, as a Beaufort number, 1 to 12
 * @param share how much of the pull it takes; all of it when absent
 * @param parts parts of the tackle that share it; one when absent
 * @param fromBoomEnd how far before the boom's end the mainsheet pulls
 */
public record RopeLoad(
    Optional<RopePull> by,
    Optional<Amount.Fixed> force,
    Optional<Integer> beaufort,
    Double share,
    Integer parts,
    Optional<Amount.Fixed> fromBoomEnd) {

  /** Absent entries get their defaults. */
  public RopeLoad {
    by = EmptyValues.optional(by);
    force = EmptyValues.optional(force);
    beaufort = EmptyValues.optional(beaufort);
    share = share == null ? 1.0 : share;
    parts = parts == null ? 1 : parts;
    fromBoomEnd = EmptyValues.optional(fromBoomEnd);
  }
}
