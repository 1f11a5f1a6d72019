package limberboard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import limberboard.library.Library;
import limberboard.upkeep.FollowUps.FollowUp;
import limberboard.upkeep.IntervalStart.Origin;

/**
 * The work of the coming seasons, if everything is done on the day it is planned for: each doing
 * starts the interval anew, resets what it resets and brings its look again; what other work does
 * in time is not expected by itself. For one boat; used once, on one thread. Cost: each expected
 * doing, in the order of their days.
 */
final class Forecast {
  private final Map<String, RunningInterval> running = new HashMap<>();
  private final Set<String> isReset = new HashSet<>();
  private final FollowUps followUps;
  private final PhaseWindows windows;
  private final Library library;
  private final int lastSeason;
  private final Map<String, LocalDate> bases = new HashMap<>();
  private final PriorityQueue<Planned> queue =
      new PriorityQueue<>(
          Comparator.comparing(Planned::day)
              .thenComparing(each -> each.work().details().resets().isEmpty())
              .thenComparing(Planned::id));
  private final List<Planned> planned = new ArrayList<>();
  private final Map<Planned, List<Planned>> met = new IdentityHashMap<>();

  Forecast(
      List<RunningInterval> running,
      FollowUps followUps,
      PhaseWindows windows,
      Library library,
      int lastSeason) {
    running.forEach(each -> this.running.put(each.page().id(), each));
    running.forEach(each -> isReset.addAll(each.page().details().resets()));
    this.followUps = followUps;
    this.windows = windows;
    this.library = library;
    this.lastSeason = lastSeason;
  }

  /** What is expected from what is due, until the last season's laying up. */
  List<Planned> from(List<Due> due) {
    for (Due each : due) {
      if (each.runsOut().isPresent()) {
        expect(first(each));
        if (!each.isLookAgain()) {
          bases.put(each.which().procedure(), each.since().date());
        }
      }
    }
    while (!queue.isEmpty()) {
      Planned next = queue.poll();
      List<Planned> waiting = met.getOrDefault(next, List.of());
      met.remove(next);
      Optional<Planned> doer = isStillExpected(next) ? doer(next) : Optional.empty();
      if (doer.isPresent()) {
        met.computeIfAbsent(doer.get(), each -> new ArrayList<>()).add(next);
        queue.addAll(waiting);
      } else if (isStillExpected(next)) {
        planned.add(next);
        done(next);
      } else {
        queue.addAll(waiting);
      }
    }
    planned.sort(Comparator.comparing(Planned::day));
    return List.copyOf(planned);
  }

  /** The expected work with which this is done, so that it need not be done by itself. */
  private Optional<Planned> doer(Planned next) {
    if (next.after().isPresent() || !isReset.contains(next.work().id())) {
      return Optional.empty();
    }
    MetBy.Doing each = MetBy.Doing.of(next);
    return queue.stream()
        .filter(other -> other.after().isEmpty() && other.day().isAfter(bases.get(next.id())))
        .filter(other -> MetBy.Doing.of(other).meets(each) && isStillExpected(other))
        .min(Comparator.comparing(Planned::day).thenComparing(Planned::id));
  }

  private static Planned first(Due due) {
    return new Planned(
        due.which(),
        due.work(),
        due.after(),
        due.plan(),
        due.runsOut().orElseThrow(),
        due.phase(),
        due.season(),
        due.why(),
        Optional.empty());
  }

  /** Whether nothing reset the interval after this doing was expected. */
  private boolean isStillExpected(Planned next) {
    String id = next.which().procedure();
    return next.which().again()
        || running.get(id).from(bases.get(id)).day().filter(next.runsOut()::equals).isPresent();
  }

  private void done(Planned next) {
    if (next.after().isPresent()) {
      return;
    }
    restart(next.id(), next.id(), next.day());
    next.work().details().resets().stream()
        .filter(id -> !id.equals(next.id()))
        .forEach(id -> restart(id, next.id(), next.day()));
    followUps.after(next.work(), next.day()).map(this::again).ifPresent(this::expect);
  }

  private void restart(String id, String by, LocalDate day) {
    RunningInterval each = running.get(id);
    LocalDate before = bases.get(id);
    if (each == null || before == null || !day.isAfter(before)) {
      return;
    }
    bases.put(id, day);
    IntervalStart since = new IntervalStart(day, id.equals(by) ? Origin.DONE : Origin.RESET, by);
    IntervalEnd runsOut = each.from(day);
    runsOut
        .day()
        .map(
            last -> {
              LocalDate plan = windows.plan(each.phase(), day, last);
              return new Planned(
                  new WorkId(id, false),
                  each.page(),
                  Optional.empty(),
                  plan.isAfter(day) ? plan : day.plusDays(1),
                  last,
                  each.phase(),
                  windows.season(each.phase(), plan),
                  each.why(since, runsOut, library),
                  Optional.empty());
            })
        .ifPresent(this::expect);
  }

  private Planned again(FollowUp followUp) {
    return new Planned(
        new WorkId(followUp.work().id(), true),
        followUp.with(),
        Optional.of(followUp.work()),
        followUp.due(),
        followUp.due(),
        Optional.empty(),
        windows.season(Optional.empty(), followUp.due()),
        followUp.why(),
        Optional.empty());
  }

  private void expect(Planned next) {
    if (next.season() <= lastSeason) {
      queue.add(next);
    }
  }
}
