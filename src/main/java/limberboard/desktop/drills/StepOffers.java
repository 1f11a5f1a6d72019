package limberboard.desktop.drills;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.desktop.drills.StepOffer.Kind;
import limberboard.drill.DrillReply;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.StepDone;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Skill;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.words.AccessWords;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/**
 * Everything that can be done at a moment of a drill, in the order of the page.
 *
 * @param run the drill so far
 */
record StepOffers(DrillRun run) {

  /** All of them, by kind. */
  List<StepOffer> all() {
    List<StepOffer> all = new ArrayList<>();
    run.drill().fault().checks().forEach(check -> all.add(check(check)));
    run.drill().fault().checks().stream()
        .filter(check -> check.check().safety().isPresent())
        .forEach(check -> all.add(secure(check)));
    run.drill().fault().causes().stream()
        .filter(cause -> !cause.isSomethingElse())
        .forEach(cause -> all.add(mend(cause)));
    run.drill().fault().access().stream()
        .filter(access -> !run.isOpen(access))
        .forEach(access -> all.add(open(access)));
    all.add(yard());
    if (run.hintsLeft() > 0) {
      all.add(hint());
    }
    all.add(giveUp());
    return all;
  }

  private StepOffer check(FaultCheck check) {
    return new StepOffer(
        Kind.CHECK,
        check.id(),
        check.ask(),
        facts(check.minutes(), check.access(), check.check().skill()),
        check.cautions(),
        found(new DrillStep.Ask(check.id())).isEmpty() && run.isAsked(check)
            ? "The owner has told it"
            : found(new DrillStep.Ask(check.id())));
  }

  private StepOffer secure(FaultCheck check) {
    double minutes = run.isAsked(check) ? 0 : check.minutes() + run.toOpen(check.access());
    return new StepOffer(
        Kind.SECURE,
        check.id(),
        check.check().safety().orElseThrow(),
        minutes == 0 ? "" : Minutes.words(minutes),
        check.cautions(),
        found(new DrillStep.Secure(check.id())));
  }

  private StepOffer mend(FaultCause cause) {
    return new StepOffer(
        Kind.MEND,
        cause.id(),
        cause.title(),
        cause.mendTitle()
            + ": "
            + facts(cause.mendMinutes(), cause.mendAccess(), cause.mendSkill()),
        cause.mendCautions(),
        tried(cause));
  }

  private StepOffer open(Access access) {
    return new StepOffer(
        Kind.OPEN,
        access.id(),
        access.title(),
        Minutes.words(run.toOpen(List.of(access))),
        List.of(),
        "");
  }

  private StepOffer yard() {
    double more = run.drill().fault().searchMinutes();
    return new StepOffer(
        Kind.YARD,
        "",
        "Hand it to the yard",
        Minutes.words(run.drill().fault().yardMinutes())
            + ", and "
            + Minutes.words(more)
            + " more if the cause you name is not the one",
        List.of(),
        "");
  }

  private StepOffer hint() {
    return new StepOffer(
        Kind.HINT,
        "",
        "Ask for a hint",
        "Costs ten minutes of the mark; " + CountWords.of(run.hintsLeft(), "hint") + " left",
        List.of(),
        "");
  }

  private static StepOffer giveUp() {
    return new StepOffer(
        Kind.GIVE_UP, "", "Give up", "The yard gets it, with no name to it", List.of(), "");
  }

  private String facts(double minutes, List<Access> access, Skill skill) {
    List<Access> shut = access.stream().filter(each -> !run.isOpen(each)).toList();
    return Minutes.words(minutes + run.toOpen(access))
        + (shut.isEmpty() ? "" : "; first: " + AccessWords.opened(shut))
        + (skill.ownerMay() ? "" : ". " + Sentences.capital(SkillWords.whose(skill)));
  }

  private String found(DrillStep step) {
    return run.done().stream()
        .filter(each -> each.step().equals(step))
        .reduce((first, second) -> second)
        .map(StepOffers::said)
        .orElse("");
  }

  private String tried(FaultCause cause) {
    return run.done().stream()
        .filter(
            each -> each.step() instanceof DrillStep.Mend mend && mend.cause().equals(cause.id()))
        .reduce((first, second) -> second)
        .map(StepOffers::said)
        .orElse("");
  }

  /** What came of a step, in words. */
  static String said(StepDone done) {
    DrillReply reply = done.reply();
    return switch (reply.kind()) {
      case ANSWER -> Sentences.capital(Sentences.spoken(reply.said())) + ".";
      case OPENED -> "Open.";
      case HEEDED -> "Done as it says.";
      case MADE_SAFE -> "Made safe.";
      case HINT -> "A hint.";
      default -> reply.said();
    };
  }

  /** What a step is called. */
  static String title(DrillRun run, DrillStep step) {
    if (step instanceof DrillStep.Ask ask) {
      return check(run, ask.check()).ask();
    } else if (step instanceof DrillStep.Secure secure) {
      return "Make it safe: " + check(run, secure.check()).ask();
    } else if (step instanceof DrillStep.Open open) {
      return run.drill().fault().access().stream()
          .filter(each -> each.id().equals(open.access()))
          .map(Access::title)
          .findFirst()
          .orElse(open.access());
    } else if (step instanceof DrillStep.Mend mend) {
      return cause(run, mend.cause()).mendTitle() + ", " + mend.sure() + " % sure";
    } else if (step instanceof DrillStep.HandOver over) {
      return over.cause()
          .map(
              named ->
                  "To the yard: "
                      + Sentences.quoted(cause(run, named.cause()).title())
                      + ", "
                      + named.sure()
                      + " % sure")
          .orElse("To the yard, with no cause named");
    } else if (step instanceof DrillStep.Heed heed) {
      return "Caution: "
          + run.drill().cautions().stream()
              .filter(each -> each.id().equals(heed.caution()))
              .map(WorkCaution::title)
              .findFirst()
              .orElse(heed.caution());
    }
    return step instanceof DrillStep.Hint ? "A hint" : "Given up";
  }

  /** What a file with what was played is called, unless somebody says otherwise. */
  static String fileName(DrillRun run, Optional<String> student) {
    String who = student.map(name -> name.replaceAll("[^\\p{L}\\p{N}]+", "-") + "-").orElse("");
    return who + run.drill().order().symptom() + "-" + run.drill().order().seed() + ".yaml";
  }

  private static FaultCheck check(DrillRun run, String id) {
    return run.drill().fault().checks().get(run.drill().fault().checkNumber(id));
  }

  private static FaultCause cause(DrillRun run, String id) {
    return run.drill().fault().causes().get(run.drill().fault().causeNumber(id));
  }
}
