package limberboard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;
import limberboard.upkeep.IntervalEnd.Waits;
import limberboard.words.Sentences;

/**
 * The interval of one procedure on one boat: tells when it is over, whatever day it began on. The
 * later it begins, the later it is over. Immutable.
 */
final class RunningInterval {
  private final Page<Procedure> page;
  private final Interval interval;
  private final BoatInterval rhythm;
  private final BoatCalendar calendar;
  private final Optional<LocalDate> notBefore;

  RunningInterval(Page<Procedure> page, Interval interval, BoatCalendar calendar) {
    this.page = page;
    this.interval = interval;
    this.calendar = calendar;
    this.rhythm = BoatInterval.of(interval, calendar.fitting());
    this.notBefore = interval.fromAge().map(age -> calendar.fitting().boat().ageFrom().plus(age));
  }

  Page<Procedure> page() {
    return page;
  }

  Optional<Phase> phase() {
    return interval.phase();
  }

  boolean expires() {
    return interval.expires();
  }

  /** Why it is over when it is. */
  Why why(IntervalStart since, IntervalEnd end, Library library) {
    if (!since.isKnown()) {
      return new Why.NotKnown(page.details().work(), end, rhythm.changes());
    }
    String by =
        library
            .procedure(since.by())
            .map(Page::title)
            .orElseGet(() -> Sentences.spoken(since.by()));
    return new Why.Runs(since, by, end, rhythm.changes(), expires());
  }

  /** When it is over if it began on this day. */
  IntervalEnd from(LocalDate base) {
    List<Limit> limits = limits(base);
    Optional<Limit> deciding =
        limits.stream()
            .filter(limit -> limit.last().isPresent())
            .min(Comparator.comparing(limit -> limit.last().orElseThrow()));
    if (deciding.isEmpty()) {
      return new IntervalEnd(Optional.empty(), Optional.empty(), limits, deciding, Waits.NOT);
    }
    LocalDate earliest = base.plusDays(1);
    LocalDate day = later(deciding.get().last().orElseThrow(), earliest);
    Waits waits = Waits.NOT;
    if (notBefore.isPresent() && notBefore.get().isAfter(day)) {
      day = notBefore.get();
      waits = Waits.FOR_AGE;
    }
    LocalDate rested = rested(day);
    return new IntervalEnd(
        Optional.of(rested),
        Optional.of(day),
        limits,
        deciding,
        rested.isAfter(day) ? restsFor(day) : waits);
  }

  private Waits restsFor(LocalDate ranOut) {
    if (interval.forWinter()) {
      return Waits.FOR_LAYING_UP;
    }
    return calendar.seasons().afloat(ranOut) ? Waits.LEFT_UNDONE_AFLOAT : Waits.FOR_LAUNCH;
  }

  /**
   * What is done afloat and does not spoil by itself rests while the boat is laid up; what is for
   * the winter rests from the middle of one until the next.
   */
  private LocalDate rested(LocalDate day) {
    LocalDate today = calendar.fitting().on();
    if (interval.forWinter()) {
      return winterRest(day, today);
    }
    boolean rests =
        !interval.expires()
            && interval
                .phase()
                .filter(phase -> phase == Phase.AFLOAT || phase == Phase.UNDER_SAIL)
                .isPresent();
    if (!rests) {
      return day;
    }
    LocalDate put = afloatFrom(day);
    boolean laidUp = !calendar.seasons().afloat(today);
    return laidUp ? later(put, afloatFrom(today)) : put;
  }

  private LocalDate winterRest(LocalDate day, LocalDate today) {
    AfloatSeason next = calendar.seasons().around(today);
    boolean layingUp = !today.isAfter(calendar.seasons().layingUpEnds(next.year() - 1));
    return layingUp ? day : later(day, next.to());
  }

  private LocalDate afloatFrom(LocalDate day) {
    return later(day, calendar.seasons().around(day).from());
  }

  private List<Limit> limits(LocalDate base) {
    List<Limit> limits = new ArrayList<>();
    rhythm.every().ifPresent(every -> limits.add(new Limit.Calendar(every, base.plus(every))));
    if (rhythm.seasons().isPresent()) {
      double seasons = rhythm.seasons().getAsDouble();
      double gone = calendar.seasons().gone(base);
      limits.add(new Limit.SeasonsAfloat(seasons, calendar.seasons().last(gone + seasons)));
    }
    if (rhythm.engineHours().isPresent()) {
      double allowed = rhythm.engineHours().getAsDouble();
      limits.add(counted("engine hours", calendar.meters().hours(), allowed, base));
    }
    rhythm
        .uses()
        .forEach(
            (use, allowed) ->
                limits.add(
                    counted(
                        Sentences.spoken(use),
                        calendar.meters().use(use, calendar.seasons()),
                        allowed,
                        base)));
    return limits;
  }

  private Limit counted(String what, Meter meter, double allowed, LocalDate base) {
    double began = meter.at(base);
    Optional<LocalDate> last = meter.last(began + allowed);
    return new Limit.Counted(
        what,
        allowed,
        Math.max(0, meter.at(calendar.fitting().on()) - began),
        meter.perSeason().orElse(0),
        last,
        last.filter(meter::isEstimated).isPresent() || meter.isEstimated(base));
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}
