package limberboard.trace.learning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.cases.Dirichlet;
import limberboard.library.page.Cause;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;

/**
 * What the recorded cases have taught: how far the chances moved toward the cases' frequencies, and
 * what cases that were held back would have cost with and without learning.
 *
 * <p>For the first, the chances before any answer are averaged over the boats of a symptom's own
 * cases, once as the pages estimate them and once with all cases, and their total variation
 * distance from the causes' frequencies is taken. For the second, the cases are shared out by
 * chance into groups; each group is replayed with what the other groups teach (k-fold
 * cross-validation), and with the estimates alone.
 *
 * @param symptoms the symptoms that have cases, by id
 * @param replayed how many held-back cases were replayed
 * @param folds into how many groups they were shared out
 * @param minutesWithout what they cost on average without learning
 * @param minutesWith what they cost on average with it
 * @param error the standard error of the difference of the two
 */
public record LearningReview(
    List<Moved> symptoms,
    int replayed,
    int folds,
    double minutesWithout,
    double minutesWith,
    double error) {
  /** Copies the list. */
  public LearningReview {
    symptoms = List.copyOf(symptoms);
  }

  /**
   * How far a symptom's chances moved.
   *
   * @param symptom its id
   * @param cases how many of its cases prove a cause
   * @param before total variation distance of the estimates from the cases' frequencies, 0 to 1
   * @param after the same with learning
   */
  public record Moved(String symptom, int cases, double before, double after) {}

  /** A case that can be replayed. */
  private record Settled(RecordedCase recorded, Page<Symptom> page, Fitting fitting, String cause) {
    Fault fault(Workspace workspace, List<RecordedCase> cases) {
      return Fault.of(page, fitting, workspace.library(), cases);
    }
  }

  /**
   * Reviews a workspace's cases.
   *
   * @param folds how many groups, 2 or more
   * @param seed how the cases are shared out
   */
  public static LearningReview of(Workspace workspace, int folds, long seed) {
    List<Settled> settled = settled(workspace);
    double[][] minutes = replayed(workspace, settled, folds, seed);
    int n = minutes.length;
    double without = IntStream.range(0, n).mapToDouble(i -> minutes[i][0]).average().orElse(0);
    double with = IntStream.range(0, n).mapToDouble(i -> minutes[i][1]).average().orElse(0);
    double squares =
        IntStream.range(0, n)
            .mapToDouble(i -> minutes[i][1] - minutes[i][0] - (with - without))
            .map(d -> d * d)
            .sum();
    double error = n < 2 ? 0 : Math.sqrt(squares / (n - 1) / n);
    return new LearningReview(moved(workspace, settled), n, folds, without, with, error);
  }

  private static List<Settled> settled(Workspace workspace) {
    List<Settled> settled = new ArrayList<>();
    for (RecordedCase recorded : workspace.cases()) {
      Optional<Page<Symptom>> page = workspace.library().symptom(recorded.symptom());
      Optional<Boat> boat = recorded.boat().boat(workspace.library());
      if (page.isPresent() && boat.isPresent() && recorded.provenCause().isPresent()) {
        Fitting fitting = new Fitting(boat.get(), recorded.date());
        String cause = recorded.provenCause().get();
        boolean can =
            page.get().details().cause(cause).map(c -> fitting.fits(c.fits())).orElse(true);
        if (can && fitting.fits(page.get().head().fits())) {
          settled.add(new Settled(recorded, page.get(), fitting, cause));
        }
      }
    }
    return settled;
  }

  private static double[][] replayed(
      Workspace workspace, List<Settled> settled, int folds, long seed) {
    List<Settled> shared = new ArrayList<>(settled);
    shared.sort(Comparator.comparing(each -> each.recorded().id()));
    Collections.shuffle(shared, new Random(seed));
    return IntStream.range(0, shared.size())
        .parallel()
        .mapToObj(
            i -> {
              Settled held = shared.get(i);
              List<RecordedCase> others =
                  IntStream.range(0, shared.size())
                      .filter(j -> j % folds != i % folds)
                      .mapToObj(j -> shared.get(j).recorded())
                      .toList();
              return new double[] {
                minutes(held, held.fault(workspace, List.of())),
                minutes(held, held.fault(workspace, others))
              };
            })
        .toArray(double[][]::new);
  }

  private static double minutes(Settled held, Fault fault) {
    return new CaseReplay(fault, held.recorded(), held.cause()).minutes();
  }

  private static List<Moved> moved(Workspace workspace, List<Settled> settled) {
    Map<String, List<Settled>> bySymptom = new LinkedHashMap<>();
    settled.stream()
        .sorted(Comparator.comparing(each -> each.page().id()))
        .forEach(
            each -> bySymptom.computeIfAbsent(each.page().id(), id -> new ArrayList<>()).add(each));
    return bySymptom.entrySet().stream()
        .map(entry -> moved(workspace, entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Moved moved(Workspace workspace, String symptom, List<Settled> cases) {
    List<String> causes =
        new ArrayList<>(cases.get(0).page().details().causes().stream().map(Cause::id).toList());
    causes.add(Symptom.SOMETHING_ELSE);
    double[] frequencies = new double[causes.size()];
    double[] estimated = new double[causes.size()];
    double[] learnt = new double[causes.size()];
    for (Settled each : cases) {
      frequencies[causes.indexOf(each.cause())] += 1.0 / cases.size();
      add(estimated, causes, each.fault(workspace, List.of()), cases.size());
      add(learnt, causes, each.fault(workspace, workspace.cases()), cases.size());
    }
    return new Moved(
        symptom,
        cases.size(),
        Dirichlet.apart(estimated, frequencies),
        Dirichlet.apart(learnt, frequencies));
  }

  private static void add(double[] sums, List<String> causes, Fault fault, int number) {
    for (FaultCause cause : fault.causes()) {
      sums[causes.indexOf(cause.id())] += cause.prior() / number;
    }
  }

  /** The average of the distances before, each symptom by its cases. */
  public double before() {
    return symptoms.stream().mapToDouble(each -> each.before() * each.cases()).sum() / cases();
  }

  /** The average of the distances with learning, each symptom by its cases. */
  public double after() {
    return symptoms.stream().mapToDouble(each -> each.after() * each.cases()).sum() / cases();
  }

  /** How many cases prove a cause. */
  public int cases() {
    return symptoms.stream().mapToInt(Moved::cases).sum();
  }
}
