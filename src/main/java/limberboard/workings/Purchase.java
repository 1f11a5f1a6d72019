package limberboard.workings;

import java.util.List;
import limberboard.library.page.Material.Pack;

/**
 * The packs to buy for an amount.
 *
 * @param packs which, and how many of each; never empty
 * @param leftOver what is left, in the material's counting unit, 0 or more
 */
public record Purchase(List<Counted> packs, double leftOver) {
  /** Copies the list. */
  public Purchase {
    packs = List.copyOf(packs);
  }

  /**
   * Packs of one size.
   *
   * @param count how many, at least 1
   * @param pack the pack
   */
  public record Counted(int count, Pack pack) {}

  /** How many packs in all. */
  public int count() {
    return packs.stream().mapToInt(Counted::count).sum();
  }
}
