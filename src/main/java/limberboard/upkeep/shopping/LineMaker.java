package limberboard.upkeep.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Stock;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.workings.PackChooser;
import limberboard.workings.Purchase;

/** Makes the line of one material: what the stock has, what is bought, and when. */
record LineMaker(Stock stock, LocalDate today, Substitutes substitutes) {
  /** More pieces than this are not planned one by one, but bought by their length together. */
  private static final long MOST_PIECES = 2_000;

  /** No rope is longer; such an amount is a slip in a page, and is bought as it stands. */
  private static final double MOST_METRES = 100_000;

  private static final double HAIR = 1e-9;

  ShoppingLine of(Page<Material> material, List<Usage> unsorted) {
    List<Usage> uses = new ArrayList<>(unsorted);
    uses.sort(Comparator.comparing(use -> use.by().day()));
    StockOnHand store = new StockOnHand(material.details(), stock.of(material), today);
    long pieces = uses.stream().mapToLong(Usage::pieces).sum();
    double metres = uses.stream().mapToDouble(Usage::amount).sum();
    boolean cut =
        material.details().isCutInPieces()
            && pieces > 0
            && pieces <= MOST_PIECES
            && metres <= MOST_METRES;
    return cut ? cut(material, uses, store) : poured(material, uses, store);
  }

  private ShoppingLine poured(Page<Material> material, List<Usage> uses, StockOnHand store) {
    Keeping keeping = new Keeping(material.details(), today);
    List<Batch> batches = new ArrayList<>();
    List<Usage> known = uses.stream().filter(use -> use.amount() > 0).toList();
    for (List<Usage> run : keeping.runs(known)) {
      batches.add(batch(material.details(), run, store, keeping));
    }
    return line(material, uses, batches, List.of(), List.of(), store);
  }

  private static Batch batch(
      Material material, List<Usage> run, StockOnHand store, Keeping keeping) {
    double needed = 0;
    double drawn = 0;
    for (Usage use : run) {
      needed += use.amount();
      drawn += store.draw(use.amount(), use.by().day());
    }
    double missing = needed - drawn > HAIR ? needed - drawn : 0;
    Optional<Purchase> purchase =
        material
            .unit()
            .filter(unit -> material.isBought())
            .flatMap(unit -> new PackChooser(material.packs(), unit).choose(missing));
    LocalDate to = lastDay(run);
    return new Batch(
        firstDay(run),
        to,
        needed,
        needed - missing,
        purchase,
        missing > 0 ? keeping.buyFrom(to) : Optional.empty());
  }

  private ShoppingLine cut(Page<Material> material, List<Usage> uses, StockOnHand store) {
    List<Usage> known = uses.stream().filter(use -> use.pieces() > 0).toList();
    List<Double> pieces = new ArrayList<>();
    for (Usage use : known) {
      for (long i = 0; i < use.pieces(); i++) {
        pieces.add(use.pieceLength());
      }
    }
    LocalDate to = lastDay(known);
    CuttingPlan plan = new CuttingPlans(material.details().packs()).plan(pieces, store.lengths(to));
    if (plan.fromStock() > 0) {
      store.tellNotes(to);
    }
    double needed = known.stream().mapToDouble(Usage::amount).sum();
    Optional<LocalDate> buyFrom =
        plan.purchase().flatMap(bought -> new Keeping(material.details(), today).buyFrom(to));
    Batch batch =
        new Batch(firstDay(known), to, needed, plan.fromStock(), plan.purchase(), buyFrom);
    return line(material, uses, List.of(batch), plan.cuts(), plan.tooLong(), store);
  }

  private ShoppingLine line(
      Page<Material> material,
      List<Usage> uses,
      List<Batch> batches,
      List<Cut> cuts,
      List<Double> tooLong,
      StockOnHand store) {
    List<String> remarks = new ArrayList<>(store.remarks());
    if (batches.size() > 1) {
      remarks.add("bought in " + batches.size() + " lots, since an opened pack would not keep");
    }
    if (!tooLong.isEmpty()) {
      remarks.add("no pack is long enough for every piece: have those made or cut to length");
    }
    return new ShoppingLine(
        material, uses, batches, cuts, tooLong, substitutes.of(material, uses), remarks);
  }

  private static LocalDate firstDay(List<Usage> run) {
    return run.get(0).by().day();
  }

  private static LocalDate lastDay(List<Usage> run) {
    return run.get(run.size() - 1).by().day();
  }
}
