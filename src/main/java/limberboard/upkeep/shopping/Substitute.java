package limberboard.upkeep.shopping;

import java.util.List;
import limberboard.library.page.Material;
import limberboard.library.page.Page;

/**
 * What may be taken instead of a material.
 *
 * @param material the substitute's page
 * @param goodFor what it is good for, in a sentence
 * @param against why not here; empty when nothing speaks against it
 * @param inStock how much of it the stock can spare, in its own counting unit; 0 when the list
 *     needs it itself
 */
public record Substitute(
    Page<Material> material, String goodFor, List<String> against, double inStock) {
  /** Copies the list. */
  public Substitute {
    against = List.copyOf(against);
  }

  /** Whether it is in stock and nothing speaks against it. */
  public boolean isOffered() {
    return inStock > 0 && against.isEmpty();
  }
}
