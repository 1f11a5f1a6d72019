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
 * <pre>{@code
 * import java.util.BitSet;
 * import java.util.List;
 * import limberboard.effort.*;
 *
 * double[][] check = {{0.9, 0.1}, {0.1, 0.9}}; // each answer, given each cause
 * var answers = new AnswerModel(new double[] {3, 1}, List.<double[][]>of(check));
 * assert Math.abs(answers.chances(new int[] {1})[1] - 0.75) < 1e-9; // after the second answer
 *
 * var asking = new EffortModel.CheckEffort(5, new BitSet(), 0, false);
 * var mending = new EffortModel.MendEffort(60, new BitSet(), 1, true);
 * var model =
 *     new EffortModel(answers, List.of(asking), List.of(mending, mending), new double[0], 600);
 * Advice advice = new Planner().advise(model, model.beginning());
 * assert advice.best().action() == Advice.Action.CHECK; // five minutes that may save an hour
 * assert new Following(model, new Planner()).minutes()
 *     < new Following(model, new MendsOnly()).minutes();
 * }</pre>
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
