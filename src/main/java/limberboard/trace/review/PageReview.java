package limberboard.trace.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;

/**
 * A symptom page looked at as its author should look at it: what it cannot do on the boats of a
 * workspace. Says nothing where no boat fits the page. Immutable.
 *
 * @param page the symptom
 * @param faults the symptom on each boat that it fits
 */
public record PageReview(Page<Symptom> page, List<Fault> faults) {
  /** Copies the faults. */
  public PageReview {
    faults = List.copyOf(faults);
  }

  /**
   * Makes the symptom ready for all boats of a workspace.
   *
   * @param page one of the workspace's symptoms
   * @param workspace the boats, the mends and the recorded cases
   * @param on the day, which decides the boats' age
   */
  public static PageReview of(Page<Symptom> page, Workspace workspace, LocalDate on) {
    return new PageReview(
        page,
        workspace.boats().stream()
            .map(boat -> new Fitting(boat, on))
            .filter(fitting -> fitting.fits(page.head().fits()))
            .map(fitting -> Fault.of(page, fitting, workspace.library(), workspace.cases()))
            .toList());
  }

  /** What is wrong with the page whatever is cheapest: causes that no check tells apart. */
  public List<Remark> warnings() {
    return new AlikeCauses(this).remarks();
  }

  /**
   * What the plans for these boats make no use of, which need not be wrong: owners' mends that cost
   * more than the yard, checks that the plans never ask for, and causes that they never end at.
   * Takes as long as drawing a {@link DiagnosticTree} for each boat, shared out between the
   * processors.
   */
  public List<Remark> advice() {
    return advice(() -> true);
  }

  /**
   * The same for somebody who may not want to wait for it any longer.
   *
   * @param goOn asked again and again, on several threads
   * @throws java.util.concurrent.CancellationException when told not to go on
   */
  public List<Remark> advice(BooleanSupplier goOn) {
    List<PlanUse> uses = faults.parallelStream().map(fault -> PlanUse.of(fault, goOn)).toList();
    List<Remark> remarks = new ArrayList<>(new DearMends(this).remarks());
    remarks.addAll(new UnreachedCauses(this, uses).remarks());
    remarks.addAll(new IdleChecks(this, uses).remarks());
    return remarks;
  }

  /** The faults on boats that can have the cause. */
  List<Fault> withCause(String id) {
    return faults.stream().filter(fault -> fault.hasCause(id)).toList();
  }

  /** The faults on boats that the check fits. */
  List<Fault> withCheck(String id) {
    return faults.stream().filter(fault -> fault.hasCheck(id)).toList();
  }

  /** Looks at each cause of the page with its JSON pointer. */
  List<Remark> ofCauses(Looking<Cause> looking) {
    return ofAll(page.details().causes(), "/causes/", looking);
  }

  /** Looks at each check of the page with its JSON pointer. */
  List<Remark> ofChecks(Looking<Check> looking) {
    return ofAll(page.details().checks(), "/checks/", looking);
  }

  private static <T> List<Remark> ofAll(List<T> list, String pointer, Looking<T> looking) {
    return IntStream.range(0, list.size())
        .mapToObj(i -> looking.at(pointer + i, list.get(i)))
        .flatMap(Optional::stream)
        .toList();
  }

  /** One kind of look at one entry of the page. */
  @FunctionalInterface
  interface Looking<T> {
    /** What there is to say about it, if anything. */
    Optional<Remark> at(String pointer, T entry);
  }
}
