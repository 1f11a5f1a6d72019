package limberboard.upkeep.plan;

import limberboard.upkeep.list.ListLine;

/**
 * A line of a plan.
 *
 * @param line the work in its place in the day, with what is opened and closed
 * @param work what is due and done with it
 * @param minutes what it takes this person, without opening anything
 */
public record PlanLine(ListLine line, DueWork work, int minutes) {}
