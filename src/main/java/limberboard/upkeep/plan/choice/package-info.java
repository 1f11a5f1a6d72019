/**
 * Choosing what to do in the time there is, as numbers: a knapsack in which what comes before what
 * holds, what is opened is shared, and days have to be filled. Knows no pages and no dates.
 *
 * <p>To use it: make {@link limberboard.upkeep.plan.choice.Chores} and give them to {@link
 * limberboard.upkeep.plan.choice.ChoiceSearch}. The {@link
 * limberboard.upkeep.plan.choice.DayChoice} says on which day each chore is done, what all that is
 * worth, and how much any choice can be worth at most.
 *
 * <pre>{@code
 * import java.util.*;
 * import limberboard.upkeep.plan.choice.*;
 *
 * // two chores under the same boards, which take 20 minutes to lift and lay; one of the other kind
 * var bilge = new Chore(30, 50, Set.of(), Set.of(0), 0, 1, 0);
 * var bolts = new Chore(30, 50, Set.of(), Set.of(0), 0, 1, 0);
 * var lamps = new Chore(60, 60, Set.of(), Set.of(), 0, 1, 0);
 * var chores = new Chores(List.of(bilge, bolts, lamps), List.of(20), List.of(40, 80));
 * DayChoice choice = ChoiceSearch.of(chores);
 * assert choice.days().equals(List.of(1, 1, -1)) : choice.days();
 * assert choice.worth() == 100 && choice.isBest();
 * }</pre>
 *
 * <p><b>Choices made.</b> An access is a chore of its own that is worth nothing and that others
 * require, so that sharing it is the same as what comes before what; the bound is then the linear
 * programme's, found by minimum cuts. Days are looked at only when a set is to be carried out: the
 * bound takes all days for one, and each access as opened once. A set that does not go into the
 * days is taken apart by the search until one does, so that of few chores the best choice is
 * proven. See {@code docs/decisions/0030-plan.md}.
 *
 * <p><b>Threads.</b> Questions and answers are immutable; a search runs on one thread.
 */
package limberboard.upkeep.plan.choice;
