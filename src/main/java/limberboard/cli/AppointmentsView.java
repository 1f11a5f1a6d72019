package limberboard.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.library.value.Phase;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Booking;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.words.Minutes;

/**
 * What is to be booked for a boat, as {@code due --appointments --json} prints it; the keys are
 * documented and stay.
 */
record AppointmentsView(
    String boat,
    String name,
    String on,
    int ownerMinutes,
    long firstTimeMinutes,
    List<CallView> calls,
    int later) {

  /** A call to somebody. */
  record CallView(
      String with,
      Optional<String> book,
      String said,
      int ownerMinutes,
      List<AppointmentLine> appointments) {}

  /** Work that somebody else does. */
  record AppointmentLine(
      String id,
      String title,
      String page,
      String group,
      Optional<String> runsOut,
      String plan,
      Optional<String> phase,
      Optional<String> book,
      Optional<String> bookBy,
      boolean late,
      String when,
      int ownerMinutes,
      long firstTimeMinutes,
      String leftUndone,
      String need,
      String why,
      Optional<String> ownPart,
      List<String> cautions) {
    static AppointmentLine of(Appointed each, Upkeep upkeep) {
      Due due = each.due();
      return new AppointmentLine(
          due.id(),
          due.title(),
          due.work().id(),
          due.group().name().toLowerCase(Locale.ROOT).replace('_', '-'),
          due.lastDay().map(Object::toString),
          due.plan().toString(),
          due.phase().map(Phase::word),
          each.booking().map(Booking::day).map(Object::toString),
          each.booking().map(Booking::by).map(Object::toString),
          each.isLate(),
          each.whenToBook(LocalDate::toString),
          each.minutes(),
          firstTime(each.minutes()),
          due.consequence().word(),
          due.need().word(),
          due.why().said(),
          each.ownPart(),
          upkeep.cautions(due.work()).stream().map(WorkCaution::id).toList());
    }
  }

  static AppointmentsView of(Upkeep upkeep, Appointments appointments) {
    return new AppointmentsView(
        upkeep.fitting().boat().id(),
        upkeep.fitting().boat().name(),
        upkeep.fitting().on().toString(),
        appointments.minutes(),
        firstTime(appointments.minutes()),
        appointments.calls().stream()
            .map(
                call ->
                    new CallView(
                        call.whom().word(),
                        call.booking().map(Booking::day).map(Object::toString),
                        call.said(LocalDate::toString),
                        call.minutes(),
                        call.all().stream().map(each -> AppointmentLine.of(each, upkeep)).toList()))
            .toList(),
        appointments.later().size());
  }

  private static long firstTime(int minutes) {
    return Math.round(minutes * Minutes.FIRST_TIME);
  }
}
