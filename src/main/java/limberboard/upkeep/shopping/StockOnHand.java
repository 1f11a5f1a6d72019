package limberboard.upkeep.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.StockItem;
import limberboard.library.page.Material;
import limberboard.library.value.KnownUnit;
import limberboard.words.DayText;
import limberboard.workings.QuantityWords;

/**
 * What is in stock of one material while work draws on it, day by day. What has run out on the day
 * it is needed is not counted, and {@link #remarks()} says so. For one material, on one thread.
 */
final class StockOnHand {
  private static final double HAIR = 1e-9;

  private final Material material;
  private final KnownUnit unit;
  private final LocalDate today;
  private final List<Holding> holdings = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  /** One item while it is drawn on. */
  private static final class Holding {
    private final StockItem item;
    private double left;
    private Optional<LocalDate> opened;
    private boolean told;
    private boolean noted;

    Holding(StockItem item, double left) {
      this.item = item;
      this.left = left;
      this.opened = item.opened();
    }
  }

  StockOnHand(Material material, List<StockItem> items, LocalDate today) {
    this.material = material;
    this.unit = material.unit().map(KnownUnit::counting).orElse(KnownUnit.PIECES);
    this.today = today;
    for (StockItem item : items) {
      double left = unit.of(item.left()).orElse(0);
      if (left > HAIR) {
        holdings.add(new Holding(item, left));
      }
    }
  }

  /** Takes as much as there is for a day, what runs out soonest first. */
  double draw(double wanted, LocalDate day) {
    double drawn = 0;
    for (Holding holding : goodOn(day)) {
      double take = Math.min(holding.left, wanted - drawn);
      if (take > 0) {
        tellNote(holding);
        holding.left -= take;
        holding.opened = holding.opened.or(() -> Optional.of(day));
        drawn += take;
      }
    }
    return drawn;
  }

  /** The lengths of what is good on a day. */
  List<Double> lengths(LocalDate day) {
    return goodOn(day).stream().map(holding -> holding.left).toList();
  }

  /** Tells what is noted of all that is good on a day, since some of it is used. */
  void tellNotes(LocalDate day) {
    goodOn(day).forEach(this::tellNote);
  }

  private void tellNote(Holding holding) {
    String note = holding.item.note().strip();
    if (!holding.noted && !note.isEmpty()) {
      holding.noted = true;
      remarks.add(amountOf(holding) + " in stock: " + note);
    }
  }

  /** What is good on a day, in the material's counting unit. */
  double amount(LocalDate day) {
    return goodOn(day).stream().mapToDouble(holding -> holding.left).sum();
  }

  /** What is noted of what is used, and what was not counted and why; one sentence each. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  private List<Holding> goodOn(LocalDate day) {
    List<Holding> good = new ArrayList<>();
    for (Holding holding : holdings) {
      Optional<String> against = against(holding, day);
      if (against.isEmpty()) {
        if (holding.left > HAIR) {
          good.add(holding);
        }
      } else if (!holding.told && holding.left > HAIR) {
        holding.told = true;
        String note = holding.item.note().isBlank() ? "" : " (" + holding.item.note().strip() + ")";
        remarks.add(amountOf(holding) + " in stock" + note + " not counted: " + against.get());
      }
    }
    good.sort(Comparator.comparing(holding -> lastDay(holding).orElse(LocalDate.MAX)));
    return good;
  }

  private String amountOf(Holding holding) {
    String amount = QuantityWords.METRIC.computed(unit.quantity(holding.left));
    return unit == KnownUnit.PIECES ? amount + (holding.left == 1 ? " piece" : " pieces") : amount;
  }

  private Optional<String> against(Holding holding, LocalDate day) {
    Optional<LocalDate> opened = holding.item.opened();
    if (opened.isPresent() && opened.get().isAfter(today)) {
      return Optional.of(
          "it is written as opened on "
              + DayText.written(opened.get())
              + ", which is still to come");
    }
    if (holding.item.bestBefore().map(day::isAfter).orElse(false)) {
      return Optional.of(
          "its date is "
              + DayText.written(holding.item.bestBefore().orElseThrow())
              + ", needed on "
              + DayText.written(day));
    }
    return openedTooLong(holding, day);
  }

  private Optional<String> openedTooLong(Holding holding, LocalDate day) {
    return holding
        .opened
        .flatMap(opened -> material.openedLife().map(life -> FarDays.after(opened, life)))
        .filter(day::isAfter)
        .map(
            last ->
                "opened on "
                    + DayText.written(holding.opened.orElseThrow())
                    + " it keeps until "
                    + DayText.written(last)
                    + ", needed on "
                    + DayText.written(day));
  }

  private Optional<LocalDate> lastDay(Holding holding) {
    Optional<LocalDate> openedLast =
        holding.opened.flatMap(
            opened -> material.openedLife().map(life -> FarDays.after(opened, life)));
    Optional<LocalDate> printed = holding.item.bestBefore();
    if (openedLast.isPresent() && printed.isPresent()) {
      return openedLast.get().isBefore(printed.get()) ? openedLast : printed;
    }
    return openedLast.or(() -> printed);
  }
}
