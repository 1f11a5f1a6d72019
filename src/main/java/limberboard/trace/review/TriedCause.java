package limberboard.trace.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.effort.AnswerModel;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.NextStep.MakeSafe;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;
import limberboard.words.Sentences;

/**
 * A fault played through with one cause behind it: every step is the one that the trace proposes,
 * every answer the likeliest under that cause. Immutable.
 *
 * @param cause the cause that is there
 * @param steps what is done, in order
 * @param end how it ends
 * @param named the cause whose mend is done last, or that the yard is told
 */
public record TriedCause(FaultCause cause, List<Step> steps, End end, Optional<FaultCause> named) {
  /** Copies the steps. */
  public TriedCause {
    steps = List.copyOf(steps);
  }

  /** How it ends. */
  public enum End {
    /** The owner mends it. */
    MENDED,
    /** The yard gets it, and is told what it is. */
    YARD_TOLD,
    /** The yard gets it and is told something else, or nothing: it has to look for it. */
    YARD_SEARCHES,
    /** Nothing is left to be done and it is not mended. */
    LOST
  }

  /**
   * A step of it.
   *
   * @param step what is done
   * @param finding what is found, in words; empty where the yard is called
   * @param minutes what it takes, with what has to be opened; with the yard's search
   * @param chance the cause's chance afterwards, 0 to 1
   * @param at where the trace stands before it
   */
  public record Step(NextStep step, String finding, double minutes, double chance, Trace at) {}

  /** What it all takes, in minutes. */
  public double minutes() {
    return steps.stream().mapToDouble(Step::minutes).sum();
  }

  /** Whether the trace comes to the cause: the owner mends it, or the yard is told of it. */
  public boolean isFound() {
    return end == End.MENDED || end == End.YARD_TOLD;
  }

  /** Plays every cause of a fault that has a name. */
  public static List<TriedCause> all(Fault fault) {
    return fault.causes().stream()
        .filter(cause -> !cause.isSomethingElse())
        .map(cause -> of(fault, cause.id()))
        .toList();
  }

  /**
   * Plays a cause.
   *
   * @throws IllegalArgumentException when the fault has no such cause
   */
  public static TriedCause of(Fault fault, String cause) {
    return new Playing(fault, fault.causeNumber(cause)).play();
  }

  /** A fault that is being played. */
  private static final class Playing {
    private static final double EVEN = 0.5;
    private final Fault fault;
    private final int number;
    private final FaultCause cause;
    private final List<Step> steps = new ArrayList<>();

    Playing(Fault fault, int number) {
      this.fault = fault;
      this.number = number;
      this.cause = fault.causes().get(number);
    }

    TriedCause play() {
      Trace trace = Trace.begin(fault);
      int most = 2 * fault.checks().size() + fault.causes().size() + 1;
      for (int i = 0; i < most; i++) {
        NextStep next = trace.next();
        if (next instanceof CallYard yard) {
          return yard(trace, yard);
        }
        if (next instanceof DoMend mend && cures(mend.cause())) {
          steps.add(new Step(next, "mended", next.minutes(), 1, trace));
          return new TriedCause(cause, steps, End.MENDED, Optional.of(mend.cause()));
        }
        trace = after(trace, next);
      }
      return new TriedCause(cause, steps, End.LOST, Optional.empty());
    }

    /** The same work cures it, whatever cause it is proposed for. */
    private boolean cures(FaultCause mended) {
      return mended.mend().equals(cause.mend()) && cause.cures() >= EVEN;
    }

    private Trace after(Trace trace, NextStep next) {
      String finding;
      Trace then;
      if (next instanceof DoCheck check) {
        String answer = likeliest(check.check());
        finding = Sentences.spoken(answer);
        then = trace.answer(check.check().id(), answer);
      } else if (next instanceof MakeSafe safe) {
        finding = "made safe";
        then = trace.madeSafe(safe.check().id());
      } else {
        finding = "not cured";
        then = trace.mendTried(((DoMend) next).cause().id());
      }
      steps.add(new Step(next, finding, next.minutes(), then.situation().chances()[number], trace));
      return then;
    }

    /** The first of the page's answers that none is likelier than. */
    private String likeliest(FaultCheck check) {
      AnswerModel answers = fault.model().answers();
      int asked = fault.checkNumber(check.id());
      return check
          .answers()
          .get(
              IntStream.range(0, check.answers().size())
                  .boxed()
                  .max(
                      Comparator.<Integer>comparingDouble(
                              answer -> answers.likelihood(asked, answer, number))
                          .thenComparing(Comparator.reverseOrder()))
                  .orElseThrow());
    }

    private TriedCause yard(Trace trace, CallYard yard) {
      Optional<FaultCause> told =
          trace.ranking().stream()
              .map(RankedCause::cause)
              .filter(each -> !each.isSomethingElse())
              .findFirst();
      boolean right = told.filter(each -> each.mend().equals(cause.mend())).isPresent();
      double minutes = fault.yardMinutes() + (right ? 0 : fault.searchMinutes());
      steps.add(new Step(yard, "", minutes, trace.situation().chances()[number], trace));
      return new TriedCause(cause, steps, right ? End.YARD_TOLD : End.YARD_SEARCHES, told);
    }
  }
}
