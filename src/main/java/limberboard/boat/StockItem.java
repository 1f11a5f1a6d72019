package limberboard.boat;

import java.time.LocalDate;
import java.util.Optional;
import javax.measure.Quantity;
import limberboard.library.page.Material;
import limberboard.library.page.Page;

/**
 * One thing in a boat's stock: one pack, one remnant of rope, or a number of pieces.
 *
 * @param material the material's page
 * @param left how much is left, in the material's counting unit; for pieces a plain number
 * @param opened the day it was opened; empty when it is unopened
 * @param bestBefore the last day the maker stands for it; empty when none is printed on it
 * @param note anything else
 */
public record StockItem(
    Page<Material> material,
    Quantity<?> left,
    Optional<LocalDate> opened,
    Optional<LocalDate> bestBefore,
    String note) {}
