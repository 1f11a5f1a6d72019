package limberboard.library;

import java.time.Period;
import java.util.Optional;

/** Checks how often work is done, and what follows it. */
final class IntervalCheck {
  private final Names names;
  private final Report report;

  IntervalCheck(Names names, Report report) {
    this.names = names;
    this.report = report;
  }

  void check(Interval interval, WorkCheck work) {
    if (interval.hasNoLimit()) {
      report.error("/interval", "has no limit", "give one of every, seasons, engine-hours or uses");
    }
    positive(interval.every(), "/interval/every");
    positive(interval.fromAge(), "/interval/from-age");
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
    interval.fromEvent().ifPresent(this::event);
    work.factors(interval.factors(), "/interval/factors");
  }

  /** What follows the work, and what it resets. */
  void lookAgain(Page<Procedure> page) {
    Procedure procedure = page.details();
    positive(procedure.lookAgain().map(Procedure.LookAgain::after), "/look-again/after");
    if (procedure.resets().contains(page.id())) {
      report.error(
          "/resets/" + procedure.resets().indexOf(page.id()),
          "names the page itself",
          "take it out: work that is done always starts its own interval anew");
    }
  }

  private void positive(Optional<Period> period, String pointer) {
    if (period.filter(IntervalCheck::isNotPositive).isPresent()) {
      report.error(pointer, "is not longer than no time", "write a period such as P1Y or P6M");
    }
  }

  private static boolean isNotPositive(Period period) {
    return period.isZero() || period.isNegative();
  }

  private void use(String use, Integer number) {
    if (number < 1) {
      report.error("/interval/uses/" + use, "is less than 1", "write a whole number");
    }
  }

  private void event(String event) {
    if (!names.isLogEvent(event)) {
      names.page(Kind.PROCEDURE, event, "/interval/from-event", report);
    }
  }
}
