/**
 * How much of a material a use on a page comes to on a boat, as a number: what is multiplied, in
 * which unit, and what of it the boat's model does not know.
 *
 * <pre>{@code
 * import java.util.Optional;
 * import limberboard.library.amount.Product;
 * import limberboard.library.page.MaterialUse;
 * import limberboard.library.value.*;
 *
 * MaterialUse use =
 *     new MaterialUse(
 *         "acetone", null, "", Optional.of(Amount.of("30 ml")), null, null, null, null, null);
 * Product product = Product.of(use, KnownUnit.MILLILITRE, Optional.empty()).orElseThrow();
 * assert product.isKnown() && Math.abs(product.value() - 30) < 1e-9;
 * }</pre>
 *
 * <p><b>Choices made.</b> Only numbers here: words and packs are made of them above, and cautions,
 * some of which hold from a certain amount on, need no more than the number.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.library.amount;
