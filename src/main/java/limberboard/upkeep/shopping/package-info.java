/**
 * Shopping: what to get for chosen work on a boat, allowing for what is in its stock.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.upkeep.shopping.Job} of each piece of work: its page, how often,
 *       and the day its materials are needed; and a {@link limberboard.upkeep.shopping.NewRope} of
 *       each rope of the boat's list that is to be made anew;
 *   <li>ask {@link limberboard.upkeep.shopping.ShoppingList#of} for the list, with the boat on the
 *       day of buying, its {@link limberboard.boat.Stock} and the library;
 *   <li>read its lines: each material once, with every use and working, what the stock has, the
 *       packs to buy, the cuts of ropes and hoses, substitutes, and what must not be mixed.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.Optional;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.Upkeep;
 * import limberboard.upkeep.shopping.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * var jobs = SeasonJobs.of(Upkeep.of(workspace.library(), dunlin), Optional.of(2026));
 * Stock store = workspace.stock(dunlin.boat());
 * var list = ShoppingList.of(jobs, dunlin, store, workspace.library());
 * var bare = ShoppingList.of(jobs, dunlin, Stock.NONE, workspace.library());
 * assert !list.lines().isEmpty() && list.toGet().size() <= bare.toGet().size();
 * }</pre>
 *
 * <p><b>Choices made.</b> The stock is drawn on day by day, what runs out soonest first; what has
 * run out on its day is not counted, and the line says so. Uses that lie further apart than a pack
 * keeps are bought in separate lots, and the lots do not depend on the stock: having something can
 * never make buying dearer. Rope, hose, cable and gaskets are cut from one length and never pieced
 * together; the cutting is exact to a tenth of a millimetre and the best there is for up to forty
 * pieces. Where one job is done by doing another in the same stay ashore or season afloat (the
 * other page {@code resets} it), or a rope is chosen that a job makes anew, what both take for the
 * same thing is counted once: as much as the one says or the other, whichever is more. Amounts that
 * are not known stay on the line as such. Rules of mixing read structured keys of pages and of the
 * boat's equipment, never words. See {@code docs/decisions/0011-shopping.md}.
 *
 * <p><b>Threads.</b> Everything public is immutable and pure: no files, no clock.
 */
package limberboard.upkeep.shopping;
