package limberboard.library.check;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.Appointment;
import limberboard.library.problem.Report;
import limberboard.library.value.Consequence;
import limberboard.library.value.Interval;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Word;

/** Checks how often work is done, and what follows it. */
final class IntervalCheck {
  /** What is taken of work that the owner may not do, in words. */
  private static final String UNSAID_APPOINTMENT =
      "the "
          + Appointment.UNSAID.with().spoken()
          + ", "
          + Appointment.UNSAID.minutes()
          + " minutes, "
          + Appointment.UNSAID_WEEKS
          + " weeks before";

  private final KnownNames names;
  private final Report report;

  IntervalCheck(KnownNames names, Report report) {
    this.names = names;
    this.report = report;
  }

  void check(Interval interval, boolean isLook, WorkCheck work) {
    if (interval.hasNoLimit()) {
      report.error("/interval", "has no limit", "give one of every, seasons, engine-hours or uses");
    }
    if (interval.seasons().orElse(1) < 1) {
      report.error("/interval/seasons", "is less than 1", "write a whole number of seasons");
    }
    if (!(interval.engineHours().orElse(1) > 0)) {
      report.error("/interval/engine-hours", "is not greater than 0", "write a number of hours");
    }
    interval.uses().forEach(this::use);
    if (interval.expires() && interval.every().isEmpty()) {
      report.error(
          "/interval/expires",
          "contradicts an interval without a date",
          "give every, by which it runs out unused, or take expires out");
    }
    if (interval.forWinter() && !interval.phase().equals(Optional.of(Phase.LAY_UP))) {
      report.error(
          "/interval/for-winter",
          "stands with work that is not done when laying up",
          "give phase: lay-up, or take for-winter out");
    }
    if (interval.surveyed() && !isLook) {
      report.error(
          "/interval/surveyed",
          "stands with work that is no look",
          "a surveyor looks and mends nothing: write work: inspect, or take surveyed out");
    }
    unsaid(interval);
    interval.fromEvent().ifPresent(word -> names.logWord(word, "/interval/from-event", report));
    work.factors(interval.factors(), "/interval/factors");
  }

  /** What is taken because the page does not say it. */
  private void unsaid(Interval interval) {
    if (interval.leftUndone().isEmpty() && isNotWritten("/interval/left-undone")) {
      report.warning(
          "/interval",
          "does not say left-undone, so " + Consequence.UNSAID.word() + " is taken",
          "write left-undone: and what follows when the work is not done, one of "
              + words(Consequence.values()));
    }
    if (interval.need().isEmpty() && isNotWritten("/interval/need")) {
      report.warning(
          "/interval",
          "does not say need, so " + Need.UNSAID.word() + " is taken",
          "write need: and how much the work is needed, one of " + words(Need.values()));
    }
  }

  /** Whether a key is missing; one with a fault in it is there, and was reported when read. */
  private boolean isNotWritten(String pointer) {
    return !report.lines().containsKey(pointer);
  }

  private static String words(Word... words) {
    return Stream.of(words).map(Word::word).collect(Collectors.joining(", "));
  }

  /** With whom work is booked that has an interval and that the owner may not do. */
  void appointment(Procedure procedure) {
    if (procedure.interval().isPresent()
        && procedure.appointment().isEmpty()
        && isNotWritten("/appointment")
        && !procedure.skill().ownerMay()) {
      report.warning(
          "/skill",
          "is "
              + procedure.skill().word()
              + " and has no appointment, so "
              + UNSAID_APPOINTMENT
              + " is taken",
          "write appointment: and with whom it is booked, the owner's own minutes and how long"
              + " before, such as {with: rigger, minutes: 20, book: P6W}");
    }
  }

  /** What the work resets. */
  void resets(Page<Procedure> page) {
    Procedure procedure = page.details();
    if (procedure.resets().contains(page.id())) {
      report.error(
          "/resets/" + procedure.resets().indexOf(page.id()),
          "names the page itself",
          "take it out: work that is done always starts its own interval anew");
    }
  }

  private void use(String use, Integer number) {
    if (number < 1) {
      report.error("/interval/uses/" + use, "is less than 1", "write a whole number");
    }
  }
}
