package limberboard.upkeep.shopping;

import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.MaterialUse.Cord;
import limberboard.library.page.Page;
import limberboard.library.value.KnownUnit;
import limberboard.workings.AmountOutcome;
import limberboard.workings.Needed;
import limberboard.workings.Workings;

/** Works out what one job uses of one material, and in what pieces. */
record UsageMaker(Workings workings) {
  private static final double HAIR = 1e-9;

  Usage of(Job job, MaterialUse use, Page<Material> page) {
    Needed needed = workings.needed(use, page);
    double once = reckoned(needed, page.details());
    double length = page.details().isCutInPieces() ? pieceLength(use, page, once) : 0;
    long pieces = length > 0 ? (long) Math.ceil(once / length - HAIR) : 0;
    double each = pieces > 0 ? pieces * length : once;
    return new Usage(
        job,
        use.purpose(),
        needed.outcome(),
        needed.working(),
        each * job.times(),
        length,
        pieces * job.times());
  }

  private static double reckoned(Needed needed, Material material) {
    KnownUnit unit = material.unit().map(KnownUnit::counting).orElse(KnownUnit.PIECES);
    return needed.outcome() instanceof AmountOutcome.Reckoned reckoned
        ? unit.of(reckoned.amount()).orElse(0)
        : 0;
  }

  /** The length of one piece: that of a cord without its count, or the whole amount. */
  private double pieceLength(MaterialUse use, Page<Material> page, double once) {
    if (use.cord().isEmpty() || once == 0) {
      return once;
    }
    Cord one = new Cord(use.cord().get().length(), Optional.empty());
    MaterialUse single =
        new MaterialUse(
            use.use(),
            use.fits(),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(one),
            Optional.empty());
    return reckoned(workings.needed(single, page), page.details());
  }
}
