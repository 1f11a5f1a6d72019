package limberboard.boat;

import java.util.List;
import limberboard.library.page.Material;
import limberboard.library.page.Page;

/**
 * What is in a boat's stock. Immutable.
 *
 * @param items in the order of the file
 */
public record Stock(List<StockItem> items) {
  /** An empty stock. */
  public static final Stock NONE = new Stock(List.of());

  /** Copies the list. */
  public Stock {
    items = List.copyOf(items);
  }

  /** What there is of a material. */
  public List<StockItem> of(Page<Material> material) {
    return items.stream().filter(item -> item.material().id().equals(material.id())).toList();
  }
}
