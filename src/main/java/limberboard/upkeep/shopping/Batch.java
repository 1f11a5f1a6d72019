package limberboard.upkeep.shopping;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.workings.Purchase;

/**
 * What is bought of a material for work that lies close enough together for an opened pack to keep.
 *
 * @param from the first day it is needed
 * @param to the last day it is needed
 * @param needed how much, in the material's counting unit
 * @param fromStock how much of that is in stock
 * @param purchase the packs for the rest; empty when nothing is to be bought or no pack is known
 * @param buyFrom the first day of buying, where a pack bought today would be stale by {@code to}
 */
public record Batch(
    LocalDate from,
    LocalDate to,
    double needed,
    double fromStock,
    Optional<Purchase> purchase,
    Optional<LocalDate> buyFrom) {

  /** What the stock does not have, 0 or more. */
  public double missing() {
    return Math.max(0, needed - fromStock);
  }
}
