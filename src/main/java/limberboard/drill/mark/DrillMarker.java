package limberboard.drill.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import limberboard.boat.WorkCaution;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.StepDone;
import limberboard.effort.Regrets.Judged;
import limberboard.effort.Situation;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;

/**
 * Marks drills: each step against the best one by what was known there, and nothing by how it
 * happened to turn out. One object belongs to one thread; marking many drills on the same fault
 * with one counsel plans each situation once.
 */
public final class DrillMarker {
  private static final double HUNDRED = 100;

  private final Counsel counsel;

  /**
   * A marker.
   *
   * @param counsel knows the best steps of the fault that is played on
   */
  public DrillMarker(Counsel counsel) {
    this.counsel = counsel;
  }

  /** Marks a drill as far as it has been played. */
  public DrillMark mark(DrillRun run) {
    return mark(run, step -> {});
  }

  /**
   * The same, told how far it has come.
   *
   * @param begun takes the number of each step before it is marked, from 0; may end the marking by
   *     throwing
   */
  public DrillMark mark(DrillRun run, IntConsumer begun) {
    Drill drill = run.drill();
    List<StepMark> steps = new ArrayList<>();
    List<Certainty> certainties = new ArrayList<>();
    for (int i = 0; i < run.done().size(); i++) {
      begun.accept(i);
      Situation after = i + 1 < run.done().size() ? run.done().get(i + 1).before() : run.now();
      steps.add(step(drill, run.done().subList(0, i), run.done().get(i), after));
      certainty(drill, run.done().get(i)).ifPresent(certainties::add);
    }
    double atLeast = counsel.regrets().advice(drill.beginning()).atLeast();
    double expected = counsel.regrets().expected(drill.beginning());
    return new DrillMark(run, steps, certainties, counsel.played(drill), expected, atLeast);
  }

  private StepMark step(Drill drill, List<StepDone> earlier, StepDone done, Situation after) {
    NextStep best = counsel.trace(drill, earlier, done.before()).next();
    StepJudge judge = new StepJudge(drill.fault(), counsel.regrets());
    Optional<Judged> judged = judge.judged(done);
    double regret = judge.regret(done, judged);
    return new StepMark(
        done,
        StepMeaning.known(drill.fault(), done.before()),
        best,
        regret,
        judged.map(Judged::doubt).orElse(0.0),
        judge.mistake(done, best, regret),
        dangers(done, best),
        StepMeaning.of(drill.fault(), done, after));
  }

  private static List<DrillDanger> dangers(StepDone done, NextStep best) {
    List<DrillDanger> dangers = new ArrayList<>();
    for (WorkCaution caution : done.unheeded()) {
      dangers.add(
          new DrillDanger(
              DrillDanger.Kind.CAUTION_LEFT_OUT,
              caution.id(),
              caution.title() + ": " + caution.danger() + " " + caution.rule()));
    }
    if (done.reply().kind() == Kind.NOT_YOURS && done.step() instanceof Mend mend) {
      dangers.add(new DrillDanger(DrillDanger.Kind.NOT_YOURS, mend.cause(), done.reply().said()));
    }
    if (done.unsafe()) {
      dangers.add(
          new DrillDanger(
              DrillDanger.Kind.NOT_SAFE_FIRST, best.id(), "This comes first: " + best.text()));
    }
    return dangers;
  }

  private static Optional<Certainty> certainty(Drill drill, StepDone done) {
    Optional<Named> named =
        done.step() instanceof Mend mend
            ? Optional.of(new Named(mend.cause(), mend.sure()))
            : done.step() instanceof HandOver handOver ? handOver.cause() : Optional.empty();
    return named.map(
        said -> {
          Fault fault = drill.fault();
          FaultCause cause = fault.causes().get(fault.causeNumber(said.cause()));
          double known = done.before().chances()[fault.causeNumber(said.cause())];
          return new Certainty(said.sure() / HUNDRED, cause.equals(drill.hiddenCause()), known);
        });
  }
}
