package limberboard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.boat.WorkMinutes;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;
import limberboard.library.value.Need;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.FollowUps.FollowUp;

/**
 * What is due on a boat on a day: all work whose procedure has an interval and fits her, and what
 * is to be looked at again. Immutable.
 */
public final class Upkeep {
  private final Library library;
  private final BoatCalendar calendar;
  private final PhaseWindows windows;
  private final List<RunningInterval> running;
  private final LoggedWork history;
  private final FollowUps followUps;
  private final Rounds rounds;
  private final Optional<LocalDate> bought;
  private final List<Due> all;
  private final MetBy met;

  private Upkeep(Library library, Fitting fitting) {
    this.library = library;
    WorkMinutes minutes = WorkMinutes.on(library, fitting);
    this.calendar = BoatCalendar.of(fitting);
    this.bought = fitting.boat().bought().filter(day -> !day.isAfter(fitting.on()));
    this.windows = new PhaseWindows(calendar.seasons());
    this.history = new LoggedWork(calendar.log(), library, fitting.boat().ageFrom());
    this.followUps = new FollowUps(library, minutes, calendar.log(), fitting.on());
    this.running = running(library, minutes, calendar);
    this.rounds = new Rounds(library, minutes);
    this.all = reckoned();
    this.met = new MetBy(all);
  }

  /**
   * Works it out.
   *
   * @param library the pages
   * @param fitting the boat on the day asked about; her log after that day is not looked at
   */
  public static Upkeep of(Library library, Fitting fitting) {
    return new Upkeep(library, fitting);
  }

  private static List<RunningInterval> running(
      Library library, WorkMinutes minutes, BoatCalendar calendar) {
    List<RunningInterval> running = new ArrayList<>();
    for (Page<Procedure> page : library.all(Procedure.class)) {
      Optional<Interval> interval = page.details().interval();
      if (interval.isPresent() && calendar.fitting().fits(page.head().fits())) {
        running.add(new RunningInterval(minutes.of(page), interval.get(), calendar));
      }
    }
    return running;
  }

  private List<Due> reckoned() {
    List<Due> due = new ArrayList<>();
    for (RunningInterval each : running) {
      history
          .since(each.page(), each.page().details().interval().orElseThrow())
          .ifPresent(since -> due.add(due(each, since)));
    }
    followUps.open(history).forEach(followUp -> due.add(due(followUp)));
    return rounds.grouped(due.stream().sorted(Due.MATTERS_FIRST).toList()).stream()
        .map(Upkeep::setApart)
        .sorted(Due.MATTERS_FIRST)
        .flatMap(each -> each.all().stream())
        .toList();
  }

  /** What is optional stands apart, whether it is over or not. */
  private static Due setApart(Due due) {
    return due.isNow() && due.need() == Need.OPTIONAL ? due.in(Group.OPTIONAL) : due;
  }

  private Due due(RunningInterval each, IntervalStart since) {
    IntervalEnd runsOut = each.from(since.date());
    return due(each, asKnown(since, runsOut), runsOut);
  }

  /**
   * What counts from new and ran out before the boat was bought, nobody knows to have been done.
   */
  private IntervalStart asKnown(IntervalStart since, IntervalEnd end) {
    boolean notKnown =
        since.origin() == IntervalStart.Origin.NEW
            && end.waits() != IntervalEnd.Waits.FOR_LAYING_UP
            && bought.isPresent()
            && end.ranOut().filter(bought.get()::isAfter).isPresent();
    return notKnown ? since.notKnown() : since;
  }

  private Due due(RunningInterval each, IntervalStart since, IntervalEnd runsOut) {
    LocalDate plan =
        runsOut
            .day()
            .map(day -> plan(each, since.date(), day))
            .orElseGet(() -> windows.next(each.phase(), on()));
    int season = windows.season(each.phase(), plan);
    return new Due(
        new WorkId(each.page().id(), false),
        each.page(),
        Optional.empty(),
        since.isKnown() ? group(runsOut.day(), season) : Group.NOT_KNOWN,
        since,
        runsOut.day(),
        plan,
        each.phase(),
        season,
        runsOut.limits(),
        runsOut.deciding().filter(Limit::isEstimated).isPresent(),
        each.expires(),
        each.why(since, runsOut, library),
        Optional.empty(),
        List.of());
  }

  private Due due(FollowUp followUp) {
    LocalDate plan = later(followUp.due(), on());
    int season = windows.season(Optional.empty(), plan);
    return new Due(
        new WorkId(followUp.work().id(), true),
        followUp.with(),
        Optional.of(followUp.work()),
        group(Optional.of(followUp.due()), season),
        new IntervalStart(followUp.done(), IntervalStart.Origin.DONE, followUp.work().id()),
        Optional.of(followUp.due()),
        plan,
        Optional.empty(),
        season,
        List.of(),
        false,
        false,
        followUp.why(),
        Optional.empty(),
        List.of());
  }

  private LocalDate plan(RunningInterval each, LocalDate base, LocalDate runsOut) {
    if (!runsOut.isAfter(on())) {
      return each.expires() ? on() : windows.next(each.phase(), on());
    }
    return later(windows.plan(each.phase(), base, runsOut), on());
  }

  private Group group(Optional<LocalDate> runsOut, int season) {
    if (runsOut.isEmpty()) {
      return Group.UNKNOWN;
    }
    if (!runsOut.get().isAfter(on())) {
      return Group.OVERDUE;
    }
    return season <= thisSeason().year() ? Group.THIS_SEASON : Group.COMING;
  }

  /** The boat on the day asked about. */
  public Fitting fitting() {
    return calendar.fitting();
  }

  /** The boat's seasons. */
  public Seasons seasons() {
    return calendar.seasons();
  }

  /** The season that the day is in, or the coming one while the boat is laid up. */
  public AfloatSeason thisSeason() {
    return calendar.seasons().around(on());
  }

  /**
   * All of it: overdue first, then what is not known, then what is for this season, and of each the
   * gravest first, then what is needed most, then what runs out first. After each round stands what
   * is done with it.
   */
  public List<Due> all() {
    return all;
  }

  /**
   * Other due work that resets this in time, so that it need not be done by itself and is in no
   * sum; empty when it stands by itself.
   */
  public Optional<Due> doneBy(Due due) {
    return met.doer(due);
  }

  /** How much some of the due work is, each piece once. */
  public DueSum sum(List<Due> some) {
    return DueSum.of(some.stream().filter(due -> doneBy(due).isEmpty()).toList());
  }

  /** What is of a group, with what is done with its rounds, in the same order. */
  public List<Due> of(Group group) {
    return all.stream()
        .filter(due -> due.round().isEmpty() && due.group() == group)
        .flatMap(due -> due.all().stream())
        .toList();
  }

  /**
   * The work of the coming seasons, by day, if everything is done on the day it is planned for.
   *
   * @param seasons how many, this one included; at least 1
   */
  public List<Planned> forecast(int seasons) {
    return until(thisSeason().year() + seasons - 1);
  }

  /**
   * The work of the season that begins in this year: what is expected for it, and what is not. What
   * is overdue belongs to this season.
   */
  public SeasonWork season(int year) {
    List<Planned> planned =
        until(year).stream()
            .filter(each -> each.season() == year || isEarlier(each, year))
            .toList();
    Set<WorkId> expected = planned.stream().map(Planned::which).collect(Collectors.toSet());
    List<Due> notDue =
        all.stream()
            .filter(due -> !due.isLookAgain() && !expected.contains(due.which()))
            .map(due -> saidWhy(due, expected))
            .toList();
    return new SeasonWork(calendar.seasons().season(year), planned, notDue);
  }

  /** What is not due since other work of the season does it, with that as the reason. */
  private Due saidWhy(Due due, Set<WorkId> expected) {
    return doneBy(due)
        .filter(doer -> expected.contains(doer.which()))
        .map(doer -> due.because(new Why.DoneWith(doer.title(), due.why())))
        .orElse(due);
  }

  private boolean isEarlier(Planned each, int year) {
    return year == thisSeason().year() && each.season() < year;
  }

  private List<Planned> until(int lastSeason) {
    List<Planned> planned =
        new Forecast(running, followUps, windows, library, lastSeason).from(all);
    return rounds.marked(planned, thisSeason().year());
  }

  /**
   * What is to be booked with others: for all that is due now and this season, and what else has to
   * be booked before the season is over.
   */
  public Appointments appointments() {
    return Appointments.of(this, false);
  }

  /**
   * The same.
   *
   * @param coming whether with what is to be booked only after this season
   */
  public Appointments appointments(boolean coming) {
    return Appointments.of(this, coming);
  }

  /** The cautions of work on this boat. */
  public List<WorkCaution> cautions(Page<Procedure> work) {
    return WorkCautions.on(library, fitting()).of(work);
  }

  /** How many entries of the log are dated later than the day, and so were not looked at. */
  public int laterEntries() {
    return fitting().boat().log().size() - calendar.log().size();
  }

  private LocalDate on() {
    return calendar.fitting().on();
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}
