/**
 * What to do next, as numbers: causes with chances, checks with answers, mends, access, and the
 * minutes it all takes. Knows no pages, no boats and no words, so that any published problem of
 * this shape can be put to it.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>an {@link limberboard.effort.AnswerModel} holds how likely each cause is and how likely
 *       each answer under each cause, and does Bayes' rule;
 *   <li>an {@link limberboard.effort.EffortModel} adds what checks, mends, access and the yard
 *       cost;
 *   <li>a {@link limberboard.effort.Policy} is asked for {@link limberboard.effort.Advice} in a
 *       {@link limberboard.effort.Situation}; {@link limberboard.effort.Planner} is the one to use;
 *   <li>{@link limberboard.effort.Following} works out what following a policy costs.
 * </ol>
 *
 * <p><b>How the planner is made.</b> {@code MendOrder} is the cheapest way on without further
 * checks (chance of cure per minute, accesses in blocks), {@code LowerBound} what no strategy can
 * go below, {@code Search} closes the gap between the two over a graph of {@code Node}s, whose
 * moves are found by {@code MoveFinder} and lead where {@code Effects} says. {@link
 * limberboard.effort.OneStep} looks only one step ahead and is what remains of it on faults too
 * large to search. The method, its assumptions and its sources are in {@code docs/tracing.md}.
 *
 * <p><b>Threads.</b> Everything public is immutable and may be shared, but for {@code Following}.
 */
package limberboard.effort;
