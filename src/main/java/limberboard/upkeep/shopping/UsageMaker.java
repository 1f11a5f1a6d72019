package limberboard.upkeep.shopping;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.MaterialUse.Cord;
import limberboard.library.page.Page;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.rigging.Rope;
import limberboard.rigging.RopeLength;
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
    double all = each * job.times();
    return new Usage(
        job,
        use.purpose(),
        use.ropes(),
        needed.outcome(),
        needed.working(),
        all,
        length,
        new Usage.Got(all, pieces * job.times(), List.of()));
  }

  /** What a rope takes: all its pieces, as the list of ropes has them cut. */
  static Usage of(NewRope rope) {
    AmountOutcome once = once(rope.rope());
    double length = rope.rope().length() instanceof RopeLength.Cut cut ? cut.cut() : 0;
    int pieces = length > 0 ? rope.rope().count() : 0;
    return new Usage(
        rope,
        rope.rope().endWords(),
        List.of(rope.id()),
        once,
        rope.rope().length().working(),
        pieces * length,
        length,
        new Usage.Got(pieces * length, pieces, List.of()));
  }

  private static AmountOutcome once(Rope rope) {
    if (rope.length() instanceof RopeLength.Open open) {
      String missing = open.missing().isEmpty() ? "" : open.missing().get(0);
      return new AmountOutcome.ToMeasure(missing, open.why());
    }
    double length = ((RopeLength.Cut) rope.length()).cut();
    return new AmountOutcome.Reckoned(
        KnownUnit.counting(CountingUnit.M).quantity(rope.count() * length));
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
            Optional.empty(),
            List.of());
    return reckoned(workings.needed(single, page), page.details());
  }
}
