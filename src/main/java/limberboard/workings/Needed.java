package limberboard.workings;

import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;

/**
 * What one job needs of one material on one boat.
 *
 * @param material the material's page
 * @param purpose what it is for, or empty
 * @param outcome how much
 * @param working how that was found, such as {@code 400 × 6 × 3 mm = 7.2 ml}; empty when there was
 *     nothing to work out
 * @param purchase the packs to buy, where the amount and the packs are known
 */
public record Needed(
    Page<Material> material,
    String purpose,
    AmountOutcome outcome,
    String working,
    Optional<Purchase> purchase) {}
