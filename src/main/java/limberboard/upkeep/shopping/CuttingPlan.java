package limberboard.upkeep.shopping;

import java.util.List;
import java.util.Optional;
import limberboard.workings.Purchase;

/**
 * How the pieces of one rope, hose or cable are cut.
 *
 * @param cuts which pieces come from which length
 * @param purchase what is bought for it
 * @param tooLong pieces in metres that no remnant and no pack is long enough for
 */
record CuttingPlan(List<Cut> cuts, Optional<Purchase> purchase, List<Double> tooLong) {
  CuttingPlan {
    cuts = List.copyOf(cuts);
    tooLong = List.copyOf(tooLong);
  }

  /** The length of the pieces that are cut from remnants, in metres. */
  double fromStock() {
    return cuts.stream().filter(Cut::isRemnant).mapToDouble(Cut::used).sum();
  }
}
