package limberboard.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.GiveUp;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Heed;
import limberboard.drill.DrillStep.Hint;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Open;
import limberboard.drill.DrillStep.Secure;
import limberboard.effort.Onward;
import limberboard.effort.Situation;
import limberboard.library.page.Model.Access;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** Does one step of a drill. */
final class StepTaker {
  private final DrillRun run;
  private final Fault fault;
  private final Situation now;
  private final Onward onward;

  StepTaker(DrillRun run) {
    this.run = run;
    this.fault = run.drill().fault();
    this.now = run.now();
    this.onward = new Onward(fault.model());
  }

  /** A step as it was done, and where that leads. */
  record Taken(StepDone done, Situation then) {}

  Taken take(DrillStep step) {
    if (step instanceof Ask ask) {
      return check(ask, fault.checkNumber(ask.check()));
    } else if (step instanceof Secure secure) {
      return secure(secure);
    } else if (step instanceof Open open) {
      return open(open);
    } else if (step instanceof Mend mend) {
      return mend(mend);
    } else if (step instanceof Heed heed) {
      return heed(heed);
    } else if (step instanceof HandOver handOver) {
      return handOver(handOver);
    } else if (step instanceof Hint) {
      return hint(step);
    } else if (step instanceof GiveUp) {
      return yard(step, "", new DrillReply(Kind.GAVE_UP, "The yard gets it, with no name to it."));
    }
    throw new IllegalArgumentException("unknown step: " + step);
  }

  private Taken check(Ask step, int number) {
    FaultCheck check = fault.checks().get(number);
    double minutes = check.minutes() + run.toOpen(check.access());
    Optional<String> said = run.drill().answer(check);
    Situation then =
        run.isAsked(check) || said.isEmpty()
            ? onward.notTold(now, number)
            : onward.answered(now, number, fault.answerNumber(number, said.get()));
    DrillReply reply =
        said.map(answer -> new DrillReply(Kind.ANSWER, answer))
            .orElse(new DrillReply(Kind.CANT_TELL, "It can't be told."));
    return work(step, minutes, reply, check.cautions(), check.access(), then);
  }

  private Taken secure(Secure step) {
    int number = fault.checkNumber(step.check());
    FaultCheck check = fault.checks().get(number);
    String how =
        check
            .check()
            .safety()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "\"" + step.check() + "\" is no check that comes first for safety"));
    boolean asked = run.isAsked(check);
    double minutes = asked ? 0 : check.minutes() + run.toOpen(check.access());
    DrillReply reply = new DrillReply(Kind.MADE_SAFE, how);
    Situation then = asked ? now : onward.notTold(now, number);
    return work(step, minutes, reply, check.cautions(), check.access(), then);
  }

  private Taken open(Open step) {
    List<Access> all = fault.access();
    List<String> ids = all.stream().map(Access::id).toList();
    int number = ids.indexOf(step.access());
    if (number < 0) {
      throw new IllegalArgumentException(
          "\""
              + step.access()
              + "\" is nothing to be opened here; there "
              + (ids.isEmpty() ? "is nothing" : "are: " + String.join(", ", ids)));
    }
    Access access = all.get(number);
    DrillReply reply = new DrillReply(Kind.OPENED, access.title());
    Situation then = onward.opened(now, number);
    return work(step, run.toOpen(List.of(access)), reply, List.of(), List.of(access), then);
  }

  private Taken mend(Mend step) {
    int number = mendable(step.cause());
    FaultCause cause = fault.causes().get(number);
    if (!cause.mendedByOwner()) {
      String whose =
          Sentences.quoted(cause.mendTitle())
              + " is work "
              + SkillWords.whose(cause.mendSkill())
              + ". It was not done.";
      return new Taken(
          new StepDone(
              step, now, 0, new DrillReply(Kind.NOT_YOURS, whose), List.of(), unsafe(), Set.of()),
          now);
    }
    double minutes = cause.mendMinutes() + run.toOpen(cause.mendAccess());
    boolean cured = run.drill().isCuredBy(cause);
    DrillReply reply =
        cured
            ? new DrillReply(Kind.MENDED, "The fault is gone.")
            : new DrillReply(Kind.NOT_CURED, "The fault is still there.");
    Situation then = cured ? now : onward.notCured(now, number);
    return work(step, minutes, reply, cause.mendCautions(), cause.mendAccess(), then);
  }

  private int mendable(String cause) {
    int number = fault.causeNumber(cause);
    if (fault.causes().get(number).isSomethingElse()) {
      throw new IllegalArgumentException(
          "\"" + cause + "\" has no mend; mend a cause of the list, or hand it to the yard");
    }
    return number;
  }

  private Taken handOver(HandOver step) {
    step.cause().ifPresent(named -> mendable(named.cause()));
    String named = step.cause().map(DrillStep.Named::cause).orElse("");
    boolean right = run.drill().hiddenCause().id().equals(named);
    String said =
        right
            ? "The yard finds what you named."
            : "The yard has to look for it: "
                + Sentences.quoted(run.drill().hiddenCause().title())
                + ".";
    return yard(step, named, new DrillReply(Kind.HANDED_OVER, said));
  }

  private Taken yard(DrillStep step, String named, DrillReply reply) {
    boolean right = run.drill().hiddenCause().id().equals(named);
    double minutes = fault.model().yardMinutes() + (right ? 0 : fault.model().searchMinutes());
    return new Taken(new StepDone(step, now, minutes, reply, List.of(), unsafe(), Set.of()), now);
  }

  private Taken heed(Heed step) {
    List<WorkCaution> all = cautions(fault);
    if (all.stream().noneMatch(caution -> caution.id().equals(step.caution()))) {
      throw new IllegalArgumentException(
          "\""
              + step.caution()
              + "\" is no caution of this fault; there "
              + (all.isEmpty()
                  ? "is none"
                  : "are: " + all.stream().map(WorkCaution::id).collect(Collectors.joining(", "))));
    }
    return free(step, new DrillReply(Kind.HEEDED, step.caution()));
  }

  /** All cautions that can come up in a fault, each once. */
  static List<WorkCaution> cautions(Fault fault) {
    List<WorkCaution> work =
        Stream.concat(
                fault.checks().stream().flatMap(check -> check.cautions().stream()),
                fault.causes().stream().flatMap(cause -> cause.mendCautions().stream()))
            .toList();
    List<WorkCaution> once = new ArrayList<>();
    WorkCautions.ofStep(fault.first(), work).stream()
        .filter(each -> once.stream().noneMatch(known -> known.id().equals(each.id())))
        .forEach(once::add);
    return List.copyOf(once);
  }

  private Taken hint(DrillStep step) {
    if (run.hintsLeft() <= 0) {
      throw new IllegalArgumentException(
          run.drill().order().hints() == 0
              ? "no hints are allowed in this drill"
              : "all hints that were allowed are used up");
    }
    return free(step, new DrillReply(Kind.HINT, ""));
  }

  private Taken free(DrillStep step, DrillReply reply) {
    return new Taken(new StepDone(step, now, 0, reply, List.of(), false, Set.of()), now);
  }

  private Taken work(
      DrillStep step,
      double minutes,
      DrillReply reply,
      List<WorkCaution> cautions,
      List<Access> access,
      Situation then) {
    Set<String> opened = new TreeSet<>();
    access.stream().filter(each -> !run.isOpen(each)).forEach(each -> opened.add(each.id()));
    return new Taken(
        new StepDone(step, now, minutes, reply, leftOut(cautions), unsafe(step), opened), then);
  }

  private List<WorkCaution> leftOut(List<WorkCaution> cautions) {
    Set<String> named =
        run.done().stream()
            .flatMap(each -> each.unheeded().stream())
            .map(WorkCaution::id)
            .collect(Collectors.toCollection(TreeSet::new));
    return run.unheeded(WorkCautions.ofStep(fault.first(), cautions)).stream()
        .filter(caution -> named.add(caution.id()))
        .toList();
  }

  private boolean unsafe() {
    return run.unsafe().isPresent();
  }

  private boolean unsafe(DrillStep step) {
    return run.unsafe()
        .map(
            check ->
                !step.equals(new Secure(check.id()))
                    && !(step.equals(new Ask(check.id())) && !run.isAsked(check)))
        .orElse(false);
  }
}
