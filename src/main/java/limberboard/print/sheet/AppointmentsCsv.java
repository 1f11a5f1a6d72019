package limberboard.print.sheet;

import java.time.LocalDate;
import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Booking;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;

/** What is to be booked as CSV, RFC 4180; the columns are documented and stay. */
public final class AppointmentsCsv {
  private static final String[] COLUMNS = {
    "boat",
    "call",
    "with",
    "id",
    "title",
    "page",
    "runs-out",
    "plan",
    "book",
    "book-by",
    "late",
    "when",
    "owner-minutes",
    "left-undone",
    "need",
    "cautions"
  };

  private final CsvTable csv = new CsvTable(COLUMNS);

  /** The table of one boat. */
  public static String of(Upkeep upkeep, Appointments appointments) {
    return new AppointmentsCsv().with(upkeep, appointments).text();
  }

  /** Adds what is to be booked for a boat. */
  public AppointmentsCsv with(Upkeep upkeep, Appointments appointments) {
    List<Appointments.Call> calls = appointments.calls();
    for (int i = 0; i < calls.size(); i++) {
      for (Appointed each : calls.get(i).all()) {
        row(i + 1, each, upkeep);
      }
    }
    return this;
  }

  /** The table with a head line, lines ended by CR LF. */
  public String text() {
    return csv.text();
  }

  private void row(int call, Appointed each, Upkeep upkeep) {
    Due due = each.due();
    csv.row(
        upkeep.fitting().boat().id(),
        call,
        each.whom().word(),
        due.id(),
        due.title(),
        due.work().id(),
        due.lastDay().map(Object::toString).orElse(""),
        due.plan(),
        each.booking().map(Booking::day).map(Object::toString).orElse(""),
        each.booking().map(Booking::by).map(Object::toString).orElse(""),
        each.isLate() ? "yes" : "no",
        each.whenToBook(LocalDate::toString),
        each.minutes(),
        due.consequence().word(),
        due.need().word(),
        String.join(" ", upkeep.cautions(due.work()).stream().map(WorkCaution::id).toList()));
  }
}
