package limberboard.workings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;

/**
 * Adds up what several jobs need, so that packs are bought for the sum and not for each job.
 * Stateless.
 */
public final class Totals {

  /**
   * One line of a shopping list.
   *
   * @param material the material
   * @param outcome the sum, where at least one job's amount is known; else the first job's outcome
   * @param open what could not be added: amounts to be measured, not stated or mistaken
   * @param purchase the packs to buy for the sum
   */
  public record Total(
      Page<Material> material,
      AmountOutcome outcome,
      List<AmountOutcome> open,
      Optional<Purchase> purchase) {
    /** Copies the list. */
    public Total {
      open = List.copyOf(open);
    }
  }

  /** One line for each material, in the order in which the materials first come. */
  public List<Total> of(List<Needed> needs) {
    Map<String, List<Needed>> byMaterial = new LinkedHashMap<>();
    for (Needed needed : needs) {
      byMaterial.computeIfAbsent(needed.material().id(), id -> new ArrayList<>()).add(needed);
    }
    return byMaterial.values().stream().map(Totals::total).toList();
  }

  private static Total total(List<Needed> needs) {
    Page<Material> material = needs.get(0).material();
    KnownUnit unit = material.details().unit().map(KnownUnit::counting).orElse(KnownUnit.PIECES);
    double sum = 0;
    boolean known = false;
    List<AmountOutcome> open = new ArrayList<>();
    for (Needed needed : needs) {
      if (needed.outcome() instanceof AmountOutcome.Reckoned reckoned) {
        sum += unit.of(reckoned.amount()).orElse(0);
        known = true;
      } else {
        open.add(needed.outcome());
      }
    }
    AmountOutcome outcome =
        known ? new AmountOutcome.Reckoned(unit.quantity(sum)) : needs.get(0).outcome();
    return new Total(material, outcome, open, purchase(material.details(), sum));
  }

  private static Optional<Purchase> purchase(Material material, double sum) {
    Optional<CountingUnit> unit = material.unit();
    return unit.flatMap(counted -> new PackChooser(material.packs(), counted).choose(sum));
  }
}
