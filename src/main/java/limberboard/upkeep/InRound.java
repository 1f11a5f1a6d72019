package limberboard.upkeep;

/**
 * That work is done at one go with other work.
 *
 * @param round the id of the round's page
 * @param minutes what it asks of the owner within the round, practised; more than 0
 */
public record InRound(String round, int minutes) {}
