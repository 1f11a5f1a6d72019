package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Work that somebody else does, and when it is to be booked.
 *
 * @param due the work
 * @param with whom, and what it asks of the owner
 * @param book the day by which to book it; the day asked about where that is over
 */
public record Appointed(
    Due due, limberboard.library.page.Procedure.Appointment with, LocalDate book) {

  /** The appointment of due work, as on this day; nothing where the owner does it. */
  public static Optional<Appointed> of(Due due, LocalDate on) {
    return due.appointment()
        .map(
            with -> {
              LocalDate book = with.book().map(due.plan()::minus).orElse(due.plan());
              return new Appointed(due, with, book.isBefore(on) ? on : book);
            });
  }
}
