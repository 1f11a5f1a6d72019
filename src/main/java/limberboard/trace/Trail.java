package limberboard.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.effort.AnswerModel;
import limberboard.effort.Situation;
import limberboard.library.value.Seen;
import limberboard.trace.TrailStep.Answered;
import limberboard.trace.TrailStep.CouldNotTell;
import limberboard.trace.TrailStep.MadeSafe;
import limberboard.trace.TrailStep.MendFailed;

/**
 * What has been done in a trace, each check and each mend at most once, and what follows from it.
 * Immutable.
 *
 * @param steps in the order in which they were first done
 * @param recent the same, in the order in which they were last done or changed
 */
record Trail(List<TrailStep> steps, List<TrailStep> recent) {
  static final Trail EMPTY = new Trail(List.of(), List.of());

  Trail {
    steps = List.copyOf(steps);
    recent = List.copyOf(recent);
  }

  /** With a step added; one about the same check or mend is replaced where it stands. */
  Trail with(TrailStep step) {
    List<TrailStep> changed = new ArrayList<>(steps);
    changed.replaceAll(done -> done.sameAs(step) ? step : done);
    if (!changed.contains(step)) {
      changed.add(step);
    }
    List<TrailStep> last = others(recent, step);
    last.add(step);
    return new Trail(changed, last);
  }

  /** Without a step. */
  Trail without(TrailStep step) {
    return new Trail(others(steps, step), others(recent, step));
  }

  private static List<TrailStep> others(List<TrailStep> steps, TrailStep step) {
    List<TrailStep> others = new ArrayList<>(steps);
    others.removeIf(done -> done.sameAs(step));
    return others;
  }

  /** The step done or changed last. */
  Optional<TrailStep> latest() {
    return recent.isEmpty() ? Optional.empty() : Optional.of(recent.get(recent.size() - 1));
  }

  /** The first steps only. */
  Trail first(int count) {
    return new Trail(steps.subList(0, count), steps.subList(0, count));
  }

  /** Check id to answer. */
  Map<String, String> answers() {
    Map<String, String> answers = new LinkedHashMap<>();
    for (TrailStep step : steps) {
      if (step instanceof Answered answered) {
        answers.put(answered.id(), answered.answer());
      }
    }
    return answers;
  }

  /**
   * The first check that safety demands and that has not been passed: neither answered so that it
   * is safe, nor made safe.
   */
  Optional<FaultCheck> unsafe(Fault fault) {
    Map<String, String> answers = answers();
    return fault.checks().stream()
        .filter(check -> check.check().comesFirst())
        .filter(check -> !steps.contains(new MadeSafe(check.id())))
        .filter(check -> !check.check().isSafe(answers.getOrDefault(check.id(), "")))
        .findFirst();
  }

  /** Whether a check was answered, or could not be told. */
  boolean isDone(FaultCheck check) {
    return steps.stream().anyMatch(step -> step.sameAs(new CouldNotTell(check.id())));
  }

  /** For each check of the fault its answer's number, or {@link AnswerModel#NOT_ANSWERED}. */
  int[] answerNumbers(Fault fault) {
    int[] numbers = new int[fault.checks().size()];
    Arrays.fill(numbers, AnswerModel.NOT_ANSWERED);
    answers()
        .forEach(
            (check, answer) -> {
              int number = fault.checkNumber(check);
              numbers[number] = fault.answerNumber(number, answer);
            });
    return numbers;
  }

  /** The causes' chances. */
  double[] chances(Fault fault) {
    return new FailedMends(fault, failed(fault))
        .chances(fault.model().answers().chances(answerNumbers(fault)));
  }

  /** The numbers of the causes whose mends were tried. */
  BitSet failed(Fault fault) {
    BitSet failed = new BitSet();
    for (TrailStep step : steps) {
      if (step instanceof MendFailed) {
        failed.set(fault.causeNumber(step.id()));
      }
    }
    return failed;
  }

  /**
   * Ids of the access that is open: what these steps have opened since the last mend whose cure
   * shows only later, for which everything was closed up again.
   */
  Set<String> opened(Fault fault) {
    Set<String> opened = new LinkedHashSet<>();
    for (TrailStep step : steps) {
      if (step instanceof MendFailed) {
        FaultCause cause = fault.causes().get(fault.causeNumber(step.id()));
        if (cause.seen() == Seen.LATER) {
          opened.clear();
        } else {
          cause.mendAccess().forEach(entry -> opened.add(entry.id()));
        }
      } else {
        FaultCheck check = fault.checks().get(fault.checkNumber(step.id()));
        check.access().forEach(entry -> opened.add(entry.id()));
      }
    }
    return opened;
  }

  /** The same as numbers. */
  Situation situation(Fault fault) {
    BitSet open = new BitSet();
    BitSet asked = new BitSet();
    for (TrailStep step : steps) {
      if (step instanceof MendFailed) {
        open = fault.model().openAfterMend(fault.causeNumber(step.id()), open);
      } else {
        int check = fault.checkNumber(step.id());
        asked.set(check);
        open = fault.model().openAfterCheck(check, open);
      }
    }
    return new Situation(chances(fault), open, asked, failed(fault));
  }
}
