package limberboard.upkeep.plan.choice;

/**
 * A chore that need not be done when another is.
 *
 * @param doer number of the chore that does it as well
 * @param met number of the chore that is met by that; another one
 */
public record Meeting(int doer, int met) {}
