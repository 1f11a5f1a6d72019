package limberboard.drill;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Heed;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.DrillStep.Secure;
import limberboard.effort.Planner;
import limberboard.effort.Regrets;
import limberboard.effort.Situation;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/**
 * Knows the best step at any point of a drill, for hints, for marking and for going through it
 * afterwards: the planner's choice by what was known there.
 *
 * <p>Remembers what it has planned for a fault; one object belongs to one thread.
 */
public final class Counsel {
  private static final double HUNDRED = 100;

  private final Fault fault;
  private final Regrets regrets;

  /** Counsel for all drills on a fault, with the work that one step is worth. */
  public Counsel(Fault fault) {
    this(fault, new Planner());
  }

  /**
   * The same with another planner.
   *
   * @param planner what chooses the steps
   */
  public Counsel(Fault fault, Planner planner) {
    this.fault = fault;
    this.regrets = new Regrets(fault.model(), planner);
  }

  /** What steps cost more than the best one. */
  public Regrets regrets() {
    return regrets;
  }

  /** The drill so far as a trace whose proposals are this counsel's. */
  public Trace trace(DrillRun run) {
    return trace(run.drill(), run.done(), run.now());
  }

  /**
   * The first steps of a drill as a trace whose proposals are this counsel's.
   *
   * @param done what was done by then
   * @param now where that led
   */
  public Trace trace(Drill drill, List<StepDone> done, Situation now) {
    return TracedDrill.of(drill, Trace.begin(fault, (model, traced) -> regrets.advice(now)), done);
  }

  /** The best step, with its reason. */
  public NextStep best(DrillRun run) {
    return trace(run).next();
  }

  /** The best step as a student would take it, the steps of its cautions first. */
  public DrillStep bestStep(DrillRun run) {
    return step(run, best(run));
  }

  /** A proposed step as a student would take it, the steps of its cautions first. */
  public DrillStep step(DrillRun run, NextStep next) {
    List<WorkCaution> left =
        next instanceof NextStep.CallYard
            ? List.of()
            : run.unheeded(WorkCautions.ofStep(fault.first(), next.cautions()));
    if (!left.isEmpty()) {
      return new Heed(left.get(0).id());
    } else if (next instanceof NextStep.DoCheck check) {
      return new Ask(check.id());
    } else if (next instanceof NextStep.MakeSafe safe) {
      return new Secure(safe.id());
    } else if (next instanceof NextStep.DoMend mend) {
      return new Mend(mend.cause().id(), sure(run, mend.cause()));
    }
    return new HandOver(named(run));
  }

  /** What the yard is told: the likeliest cause that has a name. */
  private Optional<Named> named(DrillRun run) {
    int likeliest = regrets.likeliest(run.now());
    return likeliest < 0
        ? Optional.empty()
        : Optional.of(fault.causes().get(likeliest))
            .map(cause -> new Named(cause.id(), sure(run, cause)));
  }

  /** How sure one can be of a cause by what is known, in whole per cent. */
  public int sure(DrillRun run, FaultCause cause) {
    return (int) Math.round(HUNDRED * run.now().chances()[fault.causeNumber(cause.id())]);
  }

  /**
   * The same drill played by the best steps alone: what the best plan would have come to with the
   * same hidden fault and the same answers.
   */
  public DrillRun played(Drill drill) {
    DrillRun run = DrillRun.begin(drill);
    while (!run.ended()) {
      run = run.take(bestStep(run));
    }
    return run;
  }
}
