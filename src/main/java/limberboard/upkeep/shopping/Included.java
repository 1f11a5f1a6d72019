package limberboard.upkeep.shopping;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.upkeep.Seasons;

/**
 * Which job on a list is done by doing another: what a page resets is done with it. That holds
 * where both are done in one stay ashore, or in one season afloat; each doing of the one takes in
 * one doing of the other, that which is nearest to it. For one list, on one thread.
 */
final class Included {
  /** Chains that are longer are no work that anybody does; what is beyond counts by itself. */
  private static final int LONGEST_CHAIN = 30;

  private final Seasons seasons;
  private final Map<Job, Job> by = new IdentityHashMap<>();
  private final Map<Job, List<Job>> parts = new IdentityHashMap<>();
  private final Map<Job, Integer> heights = new IdentityHashMap<>();

  /**
   * Which of these jobs is done by doing another.
   *
   * @param jobs in the order of their days
   */
  Included(List<Job> jobs, Fitting fitting) {
    seasons = Seasons.of(fitting.boat(), fitting.log());
    Map<String, List<Job>> byId = jobs.stream().collect(Collectors.groupingBy(Job::id));
    for (Job whole : jobs) {
      for (String id : whole.work().details().resets()) {
        nearest(whole, byId.getOrDefault(id, List.of())).ifPresent(part -> join(whole, part));
      }
    }
  }

  private Optional<Job> nearest(Job whole, List<Job> jobs) {
    return jobs.stream()
        .filter(job -> !by.containsKey(job))
        .filter(job -> job.times() <= whole.times() && root(whole) != job)
        .filter(job -> above(whole) + 1 + below(job) <= LONGEST_CHAIN)
        .filter(job -> isTogether(whole.day(), job.day()))
        .min(
            Comparator.comparing(job -> Math.abs(ChronoUnit.DAYS.between(job.day(), whole.day()))));
  }

  /** Whether both days are in one stay ashore or in one season afloat. */
  private boolean isTogether(LocalDate a, LocalDate b) {
    return seasons.around(a).equals(seasons.around(b)) && seasons.afloat(a) == seasons.afloat(b);
  }

  private void join(Job whole, Job part) {
    by.put(part, whole);
    parts.computeIfAbsent(whole, job -> new ArrayList<>()).add(part);
    int height = below(part);
    for (Job job = whole; job != null; job = by.get(job)) {
      height++;
      heights.merge(job, height, Math::max);
    }
  }

  /** How many jobs a job is within, one in the other. */
  private int above(Job job) {
    int above = 0;
    for (Job whole = by.get(job); whole != null; whole = by.get(whole)) {
      above++;
    }
    return above;
  }

  /** How many jobs are within a job, one in the other. */
  private int below(Job job) {
    return heights.getOrDefault(job, 0);
  }

  /** What a job is done by in the end: itself when by nothing else. */
  Job root(Job job) {
    Job root = job;
    while (by.containsKey(root)) {
      root = by.get(root);
    }
    return root;
  }

  /** What is done by doing this job. */
  List<Job> parts(Job job) {
    return Collections.unmodifiableList(parts.getOrDefault(job, List.of()));
  }

  /** Whether one of the two is done by doing the other, at once or by way of others. */
  boolean isOneOfTheOther(Job a, Job b) {
    return isWithin(a, b) || isWithin(b, a);
  }

  private boolean isWithin(Job part, Job whole) {
    Job now = part;
    while (now != whole && by.containsKey(now)) {
      now = by.get(now);
    }
    return now == whole;
  }
}
