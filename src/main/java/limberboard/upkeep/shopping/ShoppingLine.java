package limberboard.upkeep.shopping;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.workings.Purchase.Counted;

/**
 * One material on a shopping list. Amounts are in the material's counting unit.
 *
 * @param material the material's page
 * @param uses what needs it, by day
 * @param batches what is bought, divided where an opened pack would not keep from one job to the
 *     next; empty when no amount is known
 * @param cuts from what each piece is cut, for rope, hose and cable
 * @param tooLong pieces in metres for which no pack is long enough
 * @param substitutes what may be taken instead
 * @param remarks what else there is to know: what is not counted of the stock, when not to buy yet
 */
public record ShoppingLine(
    Page<Material> material,
    List<Usage> uses,
    List<Batch> batches,
    List<Cut> cuts,
    List<Double> tooLong,
    List<Substitute> substitutes,
    List<String> remarks) {
  private static final double HAIR = 1e-9;

  /** Copies the lists. */
  public ShoppingLine {
    uses = List.copyOf(uses);
    batches = List.copyOf(batches);
    cuts = List.copyOf(cuts);
    tooLong = List.copyOf(tooLong);
    substitutes = List.copyOf(substitutes);
    remarks = List.copyOf(remarks);
  }

  /** What all jobs need together, as far as their amounts are known. */
  public double needed() {
    return uses.stream().mapToDouble(Usage::amount).sum();
  }

  /** How much of that is in stock. */
  public double fromStock() {
    return batches.stream().mapToDouble(Batch::fromStock).sum();
  }

  /** What has to be got, 0 or more. */
  public double missing() {
    return batches.stream().mapToDouble(Batch::missing).sum();
  }

  /** Uses whose amount has to be measured, is not stated or cannot be worked out. */
  public List<Usage> open() {
    return uses.stream().filter(use -> !use.isReckoned()).toList();
  }

  /** The packs of all batches. */
  public List<Counted> packs() {
    return batches.stream()
        .flatMap(batch -> batch.purchase().stream())
        .flatMap(purchase -> purchase.packs().stream())
        .toList();
  }

  /** What is left over of the packs when all is done; empty when none are bought. */
  public Optional<Double> leftOver() {
    return packs().isEmpty()
        ? Optional.empty()
        : Optional.of(
            batches.stream()
                .flatMap(batch -> batch.purchase().stream())
                .mapToDouble(purchase -> purchase.leftOver())
                .sum());
  }

  /** Whether something has to be got or measured; else the stock has it all. */
  public boolean isToGet() {
    return missing() > HAIR || !open().isEmpty();
  }

  /**
   * Whether all that needs it is work of which nobody knows when it was last done: a look or a
   * question may show that none of it is needed.
   */
  public boolean isLookFirst() {
    return uses.stream().allMatch(Usage::isLookFirst);
  }

  /** Titles of what needs it, each once. */
  public List<String> work() {
    return uses.stream().map(use -> use.by().title()).distinct().toList();
  }
}
