/**
 * The sums of the trade, with a form for each.
 *
 * <p>To use it: put a {@link limberboard.desktop.upkeep.sums.WorkingsAspect} into the place. Each
 * sum has a {@link limberboard.desktop.upkeep.sums.SumForm}, which knows no Swing:
 *
 * <pre>{@code
 * import java.util.Optional;
 * import limberboard.desktop.upkeep.sums.SumForm;
 * import limberboard.workings.sums.*;
 *
 * Sum turns = Sums.ofTheTrade().sum("lashing-turns").orElseThrow();
 * var form = new SumForm(turns, Optional.empty()); // of no boat: the usual numbers
 * Input load = turns.inputs().get(0);
 * form.type(load, "much");
 * assert !form.problem(load).isEmpty();
 * form.type(load, "3000");
 * assert form.problem(load).isEmpty() && form.reckoning() instanceof Reckoning.Done;
 * }</pre>
 *
 * <p><b>Choices made.</b> Reckoned at once, on the event thread, because it takes no time.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.upkeep.sums;
