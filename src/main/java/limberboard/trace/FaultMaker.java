package limberboard.trace;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.AccessWays;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.WorkCautions;
import limberboard.boat.WorkMinutes;
import limberboard.cases.CountedCases;
import limberboard.effort.AnswerModel;
import limberboard.effort.EffortModel;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.value.Seen;
import limberboard.library.value.Skill;
import limberboard.words.Sentences;

/** Puts a {@link Fault} together. */
final class FaultMaker {
  private final Page<Symptom> page;
  private final Fitting fitting;
  private final Library library;
  private final AccessWays ways;
  private final WorkMinutes minutes;
  private final WorkCautions cautions;
  private final double yardMinutes;
  private final double searchMinutes;
  private final List<Cause> listed;
  private final CountedCases counted;
  private final FaultPriors priors;
  private final Map<String, Integer> accessNumbers = new LinkedHashMap<>();
  private final List<Double> accessMinutes = new ArrayList<>();

  FaultMaker(Page<Symptom> page, Fitting fitting, Library library, List<RecordedCase> cases) {
    this.page = page;
    this.fitting = fitting;
    this.library = library;
    this.ways = new AccessWays(fitting);
    this.minutes = WorkMinutes.on(library, fitting);
    this.cautions = WorkCautions.on(library, fitting);
    this.yardMinutes = UsableFigures.positive(fitting.boat().model().details().yardMinutes());
    this.searchMinutes =
        UsableFigures.orNone(fitting.boat().model().details().yardSearchMinutes().doubleValue());
    this.listed =
        page.details().causes().stream().filter(cause -> fitting.fits(cause.fits())).toList();
    Set<String> possible = listed.stream().map(Cause::id).collect(Collectors.toSet());
    this.counted = CountedCases.of(page.id(), possible, fitting, cases);
    this.priors = new FaultPriors(page, listed, fitting, counted);
  }

  Fault fault() {
    double[] chances = priors.chances();
    List<FaultCause> causes = new ArrayList<>();
    for (int i = 0; i < listed.size(); i++) {
      causes.add(cause(listed.get(i), chances[i]));
    }
    causes.add(somethingElse(chances[listed.size()]));
    List<FaultCheck> checks =
        page.details().checks().stream()
            .filter(check -> !check.answers().isEmpty() && fitting.fits(check.fits()))
            .map(this::check)
            .toList();
    return new Fault(
        page,
        fitting,
        cautions.first(page.details()),
        causes,
        checks,
        model(chances, causes, checks),
        priors.from());
  }

  private FaultCause cause(Cause cause, double prior) {
    Optional<Page<Procedure>> mend = library.procedure(cause.mend()).map(minutes::of);
    Skill skill = mend.map(found -> found.details().skill()).orElse(Skill.YARD);
    boolean byOwner = skill.ownerMay();
    return new FaultCause(
        cause.id(),
        cause.title(),
        cause.about(),
        prior,
        priors.from(cause),
        cause.mend(),
        mend.map(Page::title).orElseGet(() -> Sentences.spoken(cause.mend())),
        byOwner ? UsableFigures.positive(mend.orElseThrow().details().minutes()) : yardMinutes,
        byOwner ? ways.toOpen(mend.orElseThrow().details().access(), Set.of()) : List.of(),
        cause.cures().value(),
        cause.seen(),
        skill,
        mend.map(cautions::of).orElse(List.of()));
  }

  private FaultCause somethingElse(double prior) {
    return new FaultCause(
        Symptom.SOMETHING_ELSE,
        "Something else",
        "A cause that this page does not list.",
        prior,
        priors.fromSomethingElse(),
        "",
        "Hand it to the yard",
        yardMinutes,
        List.of(),
        1,
        Seen.AT_ONCE,
        Skill.YARD,
        List.of());
  }

  private FaultCheck check(Check check) {
    double minutes = UsableFigures.positive(check.minutes());
    boolean byOwner = check.skill().ownerMay();
    return new FaultCheck(
        check,
        byOwner ? minutes : Math.max(minutes, yardMinutes),
        byOwner ? ways.toOpen(check.access(), Set.of()) : List.of(),
        cautions.of(check),
        counted.answered(check));
  }

  private EffortModel model(double[] chances, List<FaultCause> causes, List<FaultCheck> checks) {
    List<String> ids = listed.stream().map(Cause::id).toList();
    AnswerModel answers =
        new AnswerModel(
            chances,
            checks.stream().map(check -> new CheckTable(check.check(), counted).of(ids)).toList());
    List<CheckEffort> checkEfforts =
        checks.stream()
            .map(
                check ->
                    new CheckEffort(
                        check.minutes(),
                        numbers(check.access()),
                        check.check().cantTell().value(),
                        check.check().comesFirst()))
            .toList();
    List<MendEffort> mendEfforts =
        causes.stream()
            .map(
                cause ->
                    new MendEffort(
                        cause.mendMinutes(),
                        numbers(cause.mendAccess()),
                        cause.cures(),
                        cause.mendedByOwner(),
                        cause.seen() == Seen.AT_ONCE,
                        !cause.isSomethingElse()))
            .toList();
    double[] minutes = accessMinutes.stream().mapToDouble(Double::doubleValue).toArray();
    return new EffortModel(answers, checkEfforts, mendEfforts, minutes, yardMinutes, searchMinutes);
  }

  private BitSet numbers(List<Access> access) {
    BitSet numbers = new BitSet();
    for (Access entry : access) {
      numbers.set(
          accessNumbers.computeIfAbsent(
              entry.id(),
              unseen -> {
                accessMinutes.add(UsableFigures.orNone(entry.minutes()));
                return accessMinutes.size() - 1;
              }));
    }
    return numbers;
  }
}
