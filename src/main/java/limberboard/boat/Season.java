package limberboard.boat;

import java.time.MonthDay;

/**
 * When a boat is afloat in the year. South of the equator a season runs over the year's end.
 *
 * @param from first day afloat
 * @param to last day afloat
 */
public record Season(MonthDay from, MonthDay to) {}
