/**
 * Calendar: what is due on a boat as a file that any calendar program reads (RFC 5545).
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>reckon what is due with {@link limberboard.upkeep.Upkeep};
 *   <li>make an {@link limberboard.calendar.UpkeepCalendar} with how long before the day it is to
 *       remind;
 *   <li>write the text it gives for the boat to a file ending in {@code .ics}.
 * </ol>
 *
 * <p><b>Choices made.</b> One event for each piece of work, on the day it is best done, for the
 * whole day and without blocking it. Its UID is made of the boat and the work alone, so that a
 * second import moves the event instead of doubling it, and its SEQUENCE grows with the day and the
 * log, as RFC 5545 section 3.8.7.4 asks. The text is written by the library biweekly; a second
 * library, ical4j, reads and validates it in the tests. Cautions come first in the description.
 *
 * <p><b>Threads.</b> Immutable, and nothing here reads a file or a clock.
 */
package limberboard.calendar;
