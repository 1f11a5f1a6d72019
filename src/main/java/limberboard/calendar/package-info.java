/**
 * Calendar: what is due on a boat as a file that any calendar program reads (RFC 5545).
 *
 * <p>To use it: make an {@link limberboard.calendar.UpkeepCalendar}, saying how many days before
 * the day it is to remind, and write the text it gives to a file ending in {@code .ics}:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.calendar.UpkeepCalendar;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.Upkeep;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * Upkeep upkeep = Upkeep.of(workspace.library(), dunlin);
 * String text = new UpkeepCalendar(7).text(upkeep); // reminds a week before
 * assert text.startsWith("BEGIN:VCALENDAR") && text.contains("BEGIN:VEVENT");
 * }</pre>
 *
 * <p><b>Choices made.</b> One event for each piece of work, on the day it is best done, and one for
 * each appointment, on the day by which to book it, for the whole day and without blocking it. Its
 * UID is made of the boat and the work alone, so that a second import moves the event instead of
 * doubling it, and its SEQUENCE grows with the day and the log, as RFC 5545 section 3.8.7.4 asks.
 * The text is written by the library biweekly; a second library, ical4j, reads and validates it in
 * the tests. Cautions come first in the description.
 *
 * <p><b>Threads.</b> Immutable, and nothing here reads a file or a clock.
 */
package limberboard.calendar;
