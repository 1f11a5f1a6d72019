package limberboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.cli.TraceView.CautionView;
import limberboard.library.page.Material.Pack;
import limberboard.library.page.Page;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.print.sheet.ShoppingWords;
import limberboard.rigging.Rope;
import limberboard.rigging.RopeLength;
import limberboard.rigging.RopeTotal;
import limberboard.upkeep.shopping.Batch;
import limberboard.upkeep.shopping.BoughtFor;
import limberboard.upkeep.shopping.Cut;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.LeftOut;
import limberboard.upkeep.shopping.MixWarning;
import limberboard.upkeep.shopping.NewRope;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.upkeep.shopping.Substitute;
import limberboard.upkeep.shopping.Usage;
import limberboard.workings.Purchase.Counted;
import limberboard.workings.Rounded;

/** A shopping list as {@code --json} prints it; amounts are in each material's unit. */
record ShoppingView(
    String boat,
    String on,
    List<CautionView> cautions,
    List<JobView> work,
    List<NewRopeView> ropes,
    List<LineView> lines,
    List<OtherRopeView> otherRopes,
    List<ToolView> tools,
    List<WarningView> mixing,
    List<LeftOutView> leftOut,
    List<String> missing) {

  static ShoppingView of(ShoppingList list) {
    return new ShoppingView(
        list.fitting().boat().id(),
        list.fitting().on().toString(),
        CautionView.of(list.cautions()),
        list.jobs().stream()
            .map(
                job ->
                    new JobView(
                        job.work().id(),
                        job.times(),
                        job.day().toString(),
                        job.lookFirst(),
                        CautionView.ids(list.cautions(job))))
            .toList(),
        list.ropes().stream().map(NewRopeView::of).toList(),
        list.lines().stream().map(LineView::of).toList(),
        list.otherRopes().stream().map(OtherRopeView::of).toList(),
        list.tools().stream()
            .map(
                line ->
                    new ToolView(
                        line.tool().id(),
                        line.tool().title(),
                        line.jobs().stream().map(job -> job.work().id()).distinct().toList()))
            .toList(),
        list.warnings().stream().map(WarningView::of).toList(),
        list.leftOut().stream().map(LeftOutView::of).toList(),
        list.missing());
  }

  /**
   * Chosen work; {@code lookFirst} where nobody knows when it was last done and it may be in order.
   */
  record JobView(String id, int times, String day, boolean lookFirst, List<String> cautions) {}

  /** A rope that is made anew; its length is null while it is open. */
  record NewRopeView(
      String id,
      String title,
      String day,
      int count,
      Optional<Double> cutMetres,
      String ends,
      Optional<String> material) {
    static NewRopeView of(NewRope wanted) {
      Rope rope = wanted.rope();
      return new NewRopeView(
          rope.id(),
          rope.title(),
          wanted.day().toString(),
          rope.count(),
          rope.length() instanceof RopeLength.Cut cut
              ? Optional.of(Rounded.of(cut.cut()))
              : Optional.empty(),
          rope.endWords(),
          rope.material().map(Page::id));
    }
  }

  /** Rope whose kind no page describes. */
  record OtherRopeView(
      String construction, double diameterMillimetres, double metres, List<RopePieceView> pieces) {
    static OtherRopeView of(RopeTotal total) {
      return new OtherRopeView(
          total.construction().word(),
          total.millimetres(),
          Rounded.of(total.metres()),
          total.pieces().stream()
              .map(
                  piece ->
                      new RopePieceView(
                          piece.title(), piece.count(), Rounded.of(piece.metres()), piece.ends()))
              .toList());
    }
  }

  /** Pieces of one rope. */
  record RopePieceView(String rope, int count, double metres, String ends) {}

  /** A material. */
  record LineView(
      String material,
      String title,
      String group,
      String unit,
      boolean bought,
      double needed,
      double fromStock,
      double missing,
      List<UseView> uses,
      List<LotView> lots,
      List<CutView> cuts,
      List<Double> tooLong,
      List<SubstituteView> instead,
      List<String> remarks) {
    static LineView of(ShoppingLine line) {
      return new LineView(
          line.material().id(),
          line.material().title(),
          line.material().details().group().word(),
          line.material().details().unit().map(CountingUnit::word).orElse(""),
          line.material().details().isBought(),
          Rounded.of(line.needed()),
          Rounded.of(line.fromStock()),
          Rounded.of(line.missing()),
          line.uses().stream().map(UseView::of).toList(),
          line.batches().stream()
              .map(
                  batch ->
                      LotView.of(
                          batch, line.material().details().unit().orElse(CountingUnit.PIECE)))
              .toList(),
          line.cuts().stream().map(CutView::of).toList(),
          line.tooLong(),
          line.substitutes().stream().map(SubstituteView::of).toList(),
          line.remarks());
    }
  }

  /**
   * What one job or rope uses: {@code alone} by itself, of which {@code amount} is counted here and
   * the rest with others; {@code amount} is null and {@code open} says why when it is not known.
   */
  record UseView(
      Optional<String> work,
      Optional<String> rope,
      String day,
      int times,
      String purpose,
      Double amount,
      Double alone,
      List<String> countedWith,
      String open,
      String working,
      long pieces,
      double pieceLength) {
    static UseView of(Usage use) {
      return new UseView(
          workOf(use.by()),
          ropeOf(use.by()),
          use.by().day().toString(),
          use.by().times(),
          use.purpose(),
          use.isReckoned() ? Rounded.of(use.amount()) : null,
          use.isReckoned() ? Rounded.of(use.alone()) : null,
          use.got().with().stream().map(BoughtFor::id).toList(),
          use.isReckoned() ? null : ShoppingWords.open(use),
          use.working(),
          use.pieces(),
          use.pieceLength());
    }
  }

  /** What is bought at a time. */
  record LotView(
      String from,
      String to,
      double needed,
      double fromStock,
      List<PackView> packs,
      double leftOver,
      Optional<String> buyFrom) {
    static LotView of(Batch batch, CountingUnit unit) {
      return new LotView(
          batch.from().toString(),
          batch.to().toString(),
          Rounded.of(batch.needed()),
          Rounded.of(batch.fromStock()),
          batch.purchase().stream()
              .flatMap(bought -> bought.packs().stream())
              .map(counted -> PackView.of(counted, unit))
              .toList(),
          Rounded.of(batch.purchase().map(bought -> bought.leftOver()).orElse(0.0)),
          batch.buyFrom().map(Object::toString));
    }
  }

  /** Packs of one size. */
  record PackView(int count, String name, double holds) {
    static PackView of(Counted counted, CountingUnit unit) {
      Pack pack = counted.pack();
      double holds = KnownUnit.counting(unit).of(pack.holds().quantity()).orElse(0);
      return new PackView(counted.count(), pack.name(), Rounded.of(holds));
    }
  }

  /** Pieces from one length. */
  record CutView(String from, boolean fromStock, double length, List<Double> pieces) {
    static CutView of(Cut cut) {
      return new CutView(cut.from(), cut.isRemnant(), cut.length(), cut.pieces());
    }
  }

  /** What may be taken instead. */
  record SubstituteView(String material, String goodFor, List<String> against, double inStock) {
    static SubstituteView of(Substitute substitute) {
      return new SubstituteView(
          substitute.material().id(),
          substitute.goodFor(),
          substitute.against(),
          Rounded.of(substitute.inStock()));
    }
  }

  /** A tool. */
  record ToolView(String tool, String title, List<String> work) {}

  /** What must not be mixed. */
  record WarningView(
      String grade,
      String what,
      String why,
      String source,
      List<String> materials,
      List<String> work) {
    static WarningView of(MixWarning warning) {
      return new WarningView(
          warning.grade().name().toLowerCase(Locale.ROOT).replace('_', '-'),
          warning.what(),
          warning.why(),
          warning.source(),
          warning.materials(),
          warning.work());
    }
  }

  /** Work that nothing is bought for. */
  record LeftOutView(Optional<String> work, Optional<String> rope, String why) {
    static LeftOutView of(LeftOut left) {
      return new LeftOutView(workOf(left.of()), ropeOf(left.of()), left.why());
    }
  }

  private static Optional<String> workOf(BoughtFor wanted) {
    return wanted instanceof Job job ? Optional.of(job.id()) : Optional.empty();
  }

  private static Optional<String> ropeOf(BoughtFor wanted) {
    return wanted instanceof NewRope rope ? Optional.of(rope.id()) : Optional.empty();
  }
}
