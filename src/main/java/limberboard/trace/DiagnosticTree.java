package limberboard.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.effort.OneStep;

/**
 * The strategy for a fault drawn out as a tree: at each fork the step the trace proposes there, and
 * a branch for each way it can turn out. Immutable.
 *
 * @param from the trace at whose present position the tree begins
 * @param rarest branches that are reached with less than this chance are not drawn further, 0 to 1
 * @param root where it begins
 * @param forks all forks, each before those behind it; the first is the root
 */
public record DiagnosticTree(Trace from, double rarest, Fork root, List<Fork> forks) {
  /** Small enough that what is left out is seldom met: one course in five hundred. */
  public static final double USUAL_RAREST = 0.002;

  /** Copies the forks. */
  public DiagnosticTree {
    forks = List.copyOf(forks);
  }

  /**
   * Draws out the tree of a trace from where it stands. Takes as long as asking the trace for its
   * next step at every fork.
   *
   * @param from where to begin
   * @param rarest branches reached with less than this chance are not drawn further; 0 draws all
   */
  public static DiagnosticTree of(Trace from, double rarest) {
    return of(from, rarest, forks -> true);
  }

  /**
   * The same for somebody who waits for it, and may not want to any longer.
   *
   * @param from where to begin
   * @param rarest branches reached with less than this chance are not drawn further; 0 draws all
   * @param goOn asked before each fork, on the same thread, with the number of forks so far
   * @throws CancellationException when told not to go on
   */
  public static DiagnosticTree of(Trace from, double rarest, IntPredicate goOn) {
    List<Fork> forks = new ArrayList<>();
    Fork root = new Growing(rarest, goOn).fork(from, 1);
    root.forEach(forks::add);
    return new DiagnosticTree(from, rarest, root, forks);
  }

  /**
   * Every caution of the tree: those before any question, then those of its checks, then those of
   * its mends, each because of the first step that brings it in.
   */
  public List<WorkCaution> cautions() {
    return cautionsOf(forks);
  }

  /** The same of some of its forks. */
  List<WorkCaution> cautionsOf(List<Fork> some) {
    List<List<WorkCaution>> all = new ArrayList<>(List.of(from.fault().first()));
    some.stream().filter(fork -> !isMend(fork)).map(DiagnosticTree::cautions).forEach(all::add);
    some.stream().filter(DiagnosticTree::isMend).map(DiagnosticTree::cautions).forEach(all::add);
    return WorkCautions.joined(all);
  }

  private static boolean isMend(Fork fork) {
    return fork.step() instanceof NextStep.DoMend;
  }

  private static List<WorkCaution> cautions(Fork fork) {
    return fork.step().cautions().stream()
        .map(caution -> caution.carriedBy(fork.step().text()))
        .toList();
  }

  /** How many steps come one after the other on the longest way, from 1. */
  public int depth() {
    return depth(root);
  }

  private static int depth(Fork fork) {
    return 1
        + fork.branches().stream()
            .flatMap(branch -> branch.then().stream())
            .mapToInt(DiagnosticTree::depth)
            .max()
            .orElse(0);
  }

  /** The fork where a trace stands now, when it is on this tree. */
  public Optional<Fork> where(Trace trace) {
    return forks.stream().filter(fork -> fork.at().equals(trace)).findFirst();
  }

  /** The chance of coming to a branch that is not drawn further, 0 to 1. */
  public double notDrawn() {
    return forks.stream()
        .flatMap(fork -> fork.branches().stream().map(branch -> new Reached(fork, branch)))
        .filter(reached -> reached.branch().end() == End.TOO_RARE)
        .mapToDouble(reached -> reached.fork().chance() * reached.branch().chance())
        .sum();
  }

  private record Reached(Fork fork, Branch branch) {}

  /**
   * A place in the tree.
   *
   * @param number counted from 1, each fork before those behind it
   * @param at the trace when it stands here: its chances, trail and contradiction
   * @param step what is done here, the same as {@code at.next()}
   * @param expectedMinutes what it costs on average from here until mended or handed to the yard,
   *     reckoned back from the ends of the tree: never more than the trace says here, and closer
   * @param chance of coming here from where the tree begins, 0 to 1
   * @param branches how the step can turn out, in the page's order; none for the yard
   */
  public record Fork(
      int number,
      Trace at,
      NextStep step,
      double expectedMinutes,
      double chance,
      List<Branch> branches) {
    /** Copies the branches. */
    public Fork {
      branches = List.copyOf(branches);
    }

    /** Visits this fork and all behind it, each before those behind it. */
    public void forEach(Consumer<Fork> visitor) {
      visitor.accept(this);
      branches.forEach(branch -> branch.then().ifPresent(fork -> fork.forEach(visitor)));
    }
  }

  /** How a branch goes on. */
  public enum End {
    /** At a fork. */
    FORK,
    /** The fault is mended. */
    MENDED,
    /** It is too rare to be drawn; the program goes on from there. */
    TOO_RARE
  }

  /**
   * One way a step can turn out.
   *
   * @param finding what is found
   * @param chance how likely that is at its fork, 0 to 1
   * @param end how it goes on
   * @param then the fork it leads to, where it leads to one
   * @param leading the likeliest cause there, where the branch is too rare to be drawn
   */
  public record Branch(
      Finding finding,
      double chance,
      End end,
      Optional<Fork> then,
      Optional<RankedCause> leading) {}

  /** A tree in the making; counts the forks. */
  private static final class Growing {
    private final double rarest;
    private final IntPredicate goOn;
    private int forks;

    Growing(double rarest, IntPredicate goOn) {
      this.rarest = rarest;
      this.goOn = goOn;
    }

    Fork fork(Trace at, double chance) {
      if (!goOn.test(forks)) {
        throw new CancellationException("the tree is no longer wanted");
      }
      int number = ++forks;
      NextStep step = at.next();
      List<Branch> branches = new ArrayList<>();
      double minutes = step.minutes();
      for (StepOutcome outcome : at.outcomes(step)) {
        Branch branch = branch(outcome, chance);
        branches.add(branch);
        minutes += outcome.chance() * behind(branch, outcome);
      }
      double expected = Math.min(at.expectedMinutes(), minutes);
      return new Fork(number, at, step, expected, chance, branches);
    }

    /** What is still to be expected behind a branch; reckoned roughly where it is not drawn. */
    private static double behind(Branch branch, StepOutcome outcome) {
      return switch (branch.end()) {
        case MENDED -> 0;
        case FORK -> branch.then().orElseThrow().expectedMinutes();
        case TOO_RARE -> roughly(outcome.then().orElseThrow());
      };
    }

    /** By looking one step ahead: seldom less than the plan would cost, often more. */
    private static double roughly(Trace trace) {
      return new OneStep()
          .advise(trace.fault().model(), trace.situation())
          .best()
          .expectedMinutes();
    }

    private Branch branch(StepOutcome outcome, double chance) {
      double here = chance * outcome.chance();
      Finding finding = outcome.finding();
      if (outcome.then().isEmpty()) {
        return new Branch(
            finding, outcome.chance(), End.MENDED, Optional.empty(), Optional.empty());
      }
      if (here < rarest) {
        RankedCause leading = outcome.then().get().ranking().get(0);
        return new Branch(
            finding, outcome.chance(), End.TOO_RARE, Optional.empty(), Optional.of(leading));
      }
      Fork then = fork(outcome.then().get(), here);
      return new Branch(finding, outcome.chance(), End.FORK, Optional.of(then), Optional.empty());
    }
  }
}
