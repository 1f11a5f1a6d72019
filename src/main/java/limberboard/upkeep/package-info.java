/**
 * Upkeep: what is due on a boat and when, from the intervals of procedures and the boat's log.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make an {@link limberboard.upkeep.Upkeep} of the library and a boat on a day (a {@link
 *       limberboard.boat.Fitting});
 *   <li>ask it what is {@linkplain limberboard.upkeep.Upkeep#of(limberboard.upkeep.Due.Group)
 *       overdue, due this season or coming}: each {@link limberboard.upkeep.Due} says when, since
 *       when and why;
 *   <li>ask for a {@linkplain limberboard.upkeep.Upkeep#forecast(int) forecast}, or for the {@link
 *       limberboard.upkeep.SeasonWork} of one season, from which lists and shopping are made.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * LocalDate day = LocalDate.of(2026, 3, 15);
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), day);
 * // what is overdue, or done at one go with what is
 * Upkeep upkeep = Upkeep.of(workspace.library(), dunlin);
 * for (Due due : upkeep.of(Due.Group.OVERDUE)) {
 *   assert due.isOver(day) || !due.with().isEmpty() || due.round().isPresent() : due;
 * }
 * assert !upkeep.forecast(2).isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> An interval runs from the day the work was last done, or was reset by
 * other work, or from when the boat was new. What of a bought boat would have run out before that,
 * with nothing in the log, is not known rather than overdue. Of several limits the first counts.
 * Seasons are counted by the days afloat ({@link limberboard.upkeep.Seasons}), so that winter costs
 * nothing and what ran two seasons is due at the next launching. Hours and uses beyond the log are
 * estimated from the last three seasons, and called so. The later an interval begins, the later it
 * is over: doing work can move no date forward. When work <i>runs out</i> and when it is best
 * <i>done</i> are two days; the second looks for the boat being ashore or afloat, as the work needs
 * it. Rules and examples: {@code intervals.spec.md} among the test resources; reasons: {@code
 * docs/decisions/0008-intervals.md}.
 *
 * <p><b>Threads.</b> All values are immutable; nothing here reads a file or a clock. What it costs
 * is in {@code docs/benchmarks.md}.
 */
package limberboard.upkeep;
