package limberboard.upkeep.plan;

import java.time.LocalDate;

/**
 * A day on which a person has time for the boat.
 *
 * @param day the day
 * @param minutes how long, at least 1
 */
public record FreeDay(LocalDate day, int minutes) {}
