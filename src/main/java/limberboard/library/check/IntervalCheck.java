package limberboard.library.check;

import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Report;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;

/** Checks how often work is done, and what follows it. */
final class IntervalCheck {
  private final KnownNames names;
  private final Report report;

  IntervalCheck(KnownNames names, Report report) {
    this.names = names;
    this.report = report;
  }

  void check(Interval interval, WorkCheck work) {
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
    interval.fromEvent().ifPresent(word -> names.logWord(word, "/interval/from-event", report));
    work.factors(interval.factors(), "/interval/factors");
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
