package limberboard.library.check;

import limberboard.library.page.RopeLoad;
import limberboard.library.problem.Report;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.RopePull;

/** Checks the load on one rope. */
final class RopeLoadCheck {
  private static final int MOST_PARTS = 24;
  private static final int HURRICANE = 12;

  private final Report report;

  RopeLoadCheck(Report report) {
    this.report = report;
  }

  void check(RopeLoad load, String pointer) {
    if (load.by().isPresent() == load.force().isPresent()) {
      report.error(
          pointer,
          load.by().isPresent() ? "has both by and force" : "has neither by nor force",
          "keep one of by, force");
    }
    wind(load, pointer);
    load.force()
        .filter(force -> !(KnownUnit.NEWTONS.of(force.quantity()).orElse(0) > 0))
        .ifPresent(
            force ->
                report.error(
                    pointer + "/force", "is no force above 0", "write a force such as 400 N"));
    if (!(load.share() > 0 && Double.isFinite(load.share()))) {
      report.error(pointer + "/share", "is not greater than 0", "write a share such as 0.5");
    }
    if (load.parts() < 1 || load.parts() > MOST_PARTS) {
      report.error(
          pointer + "/parts", "is not within 1 to 24", "write the number of parts of the tackle");
    }
    boom(load, pointer + "/from-boom-end");
  }

  private void wind(RopeLoad load, String pointer) {
    if (load.by().isPresent() && load.beaufort().isEmpty()) {
      report.error(pointer + "/beaufort", "is missing", "write the strongest wind it is used in");
    }
    load.beaufort()
        .filter(number -> number < 1 || number > HURRICANE)
        .ifPresent(
            number ->
                report.error(
                    pointer + "/beaufort", "is not within 1 to 12", "write a Beaufort number"));
  }

  private void boom(RopeLoad load, String pointer) {
    if (load.fromBoomEnd().isEmpty()) {
      return;
    }
    if (!load.by().filter(RopePull.MAINSHEET::equals).isPresent()) {
      report.error(pointer, "counts for the mainsheet alone", "leave it out");
    } else if (!KnownUnit.METRES.measures(load.fromBoomEnd().get().quantity())) {
      report.error(pointer, "is no length", "write a length such as 0.4 m");
    }
  }
}
