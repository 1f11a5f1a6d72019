package limberboard.trace;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.WorkCaution;
import limberboard.effort.EffortModel;
import limberboard.library.Library;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/**
 * One symptom made ready for one boat and day: the causes and checks that fit it, with their
 * chances, costs and access. Immutable.
 */
public final class Fault {
  private final Page<Symptom> page;
  private final Fitting fitting;
  private final List<WorkCaution> first;
  private final List<FaultCause> causes;
  private final List<FaultCheck> checks;
  private final EffortModel model;
  private final String chancesFrom;
  private final Map<String, Integer> causeNumbers;
  private final Map<String, Integer> checkNumbers;

  Fault(
      Page<Symptom> page,
      Fitting fitting,
      List<WorkCaution> first,
      List<FaultCause> causes,
      List<FaultCheck> checks,
      EffortModel model,
      String chancesFrom) {
    this.page = page;
    this.fitting = fitting;
    this.first = List.copyOf(first);
    this.causes = List.copyOf(causes);
    this.checks = List.copyOf(checks);
    this.model = model;
    this.chancesFrom = chancesFrom;
    this.causeNumbers = numbers(causes, FaultCause::id);
    this.checkNumbers = numbers(checks, FaultCheck::id);
  }

  private static <T> Map<String, Integer> numbers(List<T> list, Function<T, String> id) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (int i = 0; i < list.size(); i++) {
      numbers.putIfAbsent(id.apply(list.get(i)), i);
    }
    return numbers;
  }

  /**
   * Makes a symptom ready for a boat.
   *
   * @param page the symptom
   * @param fitting the boat and the day
   * @param library where the mends' procedures are looked up; a mend that is not there is the
   *     yard's
   * @param cases recorded cases of any symptom and boat; those of this symptom, with causes that
   *     this boat can have, are counted
   */
  public static Fault of(
      Page<Symptom> page, Fitting fitting, Library library, List<RecordedCase> cases) {
    return new FaultMaker(page, fitting, library, cases).fault();
  }

  /** The same fault with other numbers behind it. */
  public Fault with(EffortModel numbers) {
    return new Fault(page, fitting, first, causes, checks, numbers, chancesFrom);
  }

  /**
   * Where the chances before any answer come from: "the workshop's estimate", or that and so many
   * recorded cases, what weighs more first.
   */
  public String chancesFrom() {
    return chancesFrom;
  }

  /** The symptom. */
  public Page<Symptom> page() {
    return page;
  }

  /** The boat and the day. */
  public Fitting fitting() {
    return fitting;
  }

  /** The cautions that come before any question. */
  public List<WorkCaution> first() {
    return first;
  }

  /** The causes in the page's order, with {@code something-else} at the end. */
  public List<FaultCause> causes() {
    return causes;
  }

  /** The checks in the page's order. */
  public List<FaultCheck> checks() {
    return checks;
  }

  /**
   * Everything that may have to be opened, in the order in which {@link #model} counts it: as the
   * checks and then the mends name it.
   */
  public List<Access> access() {
    Map<String, Access> access = new LinkedHashMap<>();
    Stream.concat(
            checks.stream().flatMap(check -> check.access().stream()),
            causes.stream().flatMap(cause -> cause.mendAccess().stream()))
        .forEach(each -> access.putIfAbsent(each.id(), each));
    return List.copyOf(access.values());
  }

  /** The numbers behind it: causes and checks are counted as in the lists. */
  public EffortModel model() {
    return model;
  }

  /** What handing the fault to the yard costs the owner, in minutes. */
  public double yardMinutes() {
    return model.yardMinutes();
  }

  /** What it costs more when the yard is told a wrong cause, or none, in minutes. */
  public double searchMinutes() {
    return model.searchMinutes();
  }

  /**
   * The number of a cause.
   *
   * @throws IllegalArgumentException when this boat's list has none of that id
   */
  public int causeNumber(String id) {
    return number("cause", id, causeNumbers);
  }

  /** A check that comes first for safety; see {@link Trace#madeSafe}. */
  FaultCheck comingFirst(String check) {
    FaultCheck found = checks.get(checkNumber(check));
    if (!found.check().comesFirst()) {
      throw new IllegalArgumentException(
          "\"" + check + "\" is no check that comes first for safety");
    }
    return found;
  }

  /** The id of a cause that has a mend; see {@link Trace#mendTried}. */
  String mendable(String cause) {
    if (causes.get(causeNumber(cause)).isSomethingElse()) {
      throw new IllegalArgumentException(
          "\"" + Symptom.SOMETHING_ELSE + "\" has no mend; name a cause of the list");
    }
    return cause;
  }

  /**
   * The number of a check.
   *
   * @throws IllegalArgumentException when this boat's list has none of that id
   */
  public int checkNumber(String id) {
    return number("check", id, checkNumbers);
  }

  /**
   * The number of an answer to a check.
   *
   * @throws IllegalArgumentException when the check has no such answer
   */
  public int answerNumber(int check, String answer) {
    int number = checks.get(check).answers().indexOf(answer);
    if (number < 0) {
      throw unknown("answer", answer, checks.get(check).answers());
    }
    return number;
  }

  /** Whether this boat can have the cause. */
  public boolean hasCause(String id) {
    return causeNumbers.containsKey(id);
  }

  /** Whether the check makes sense on this boat. */
  public boolean hasCheck(String id) {
    return checkNumbers.containsKey(id);
  }

  private int number(String what, String id, Map<String, Integer> numbers) {
    if (!numbers.containsKey(id)) {
      throw unknown(what, id, numbers.keySet());
    }
    return numbers.get(id);
  }

  private IllegalArgumentException unknown(String what, String id, Collection<String> known) {
    return new IllegalArgumentException(
        "\"%s\" is no %s of \"%s\" on this boat; there are: %s"
            .formatted(id, what, page.title(), String.join(", ", known)));
  }

  /**
   * Whether another reckoning of this fault is the same as far as planning goes: the same causes,
   * checks and answers with the same numbers, whatever their words are.
   */
  boolean plansLike(Fault other) {
    return ids(causes, FaultCause::id).equals(ids(other.causes, FaultCause::id))
        && ids(checks, FaultCheck::id).equals(ids(other.checks, FaultCheck::id))
        && ids(checks, FaultCheck::answers).equals(ids(other.checks, FaultCheck::answers))
        && model.equals(other.model);
  }

  private static <T, I> List<I> ids(List<T> list, Function<T, I> id) {
    return list.stream().map(id).toList();
  }

  /**
   * Two faults are equal when they say the same of the same boat: its log does not count, and the
   * day only as far as it changes what is likely.
   */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Fault that
            && page.equals(that.page)
            && isSameBoat(fitting.boat(), that.fitting.boat())
            && first.equals(that.first)
            && causes.equals(that.causes)
            && checks.equals(that.checks)
            && model.equals(that.model);
  }

  private static boolean isSameBoat(Boat one, Boat other) {
    return one.id().equals(other.id())
        && one.name().equals(other.name())
        && one.model().equals(other.model())
        && one.hull() == other.hull()
        && one.built() == other.built()
        && one.equipment().equals(other.equipment())
        && one.water() == other.water()
        && one.use() == other.use();
  }

  @Override
  public int hashCode() {
    return Objects.hash(page.id(), fitting.boat().id());
  }
}
