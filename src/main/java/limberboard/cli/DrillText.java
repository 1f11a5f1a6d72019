package limberboard.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.drill.Drill;
import limberboard.drill.DrillReply;
import limberboard.drill.DrillRun;
import limberboard.drill.StepDone;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.MistakeKind;
import limberboard.drill.mark.StepMark;
import limberboard.library.page.Model.Access;
import limberboard.trace.CautionsRead;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** Prints a drill for a person at a terminal: cautions before the work, chances only afterwards. */
final class DrillText {
  private final PrintWriter out;

  DrillText(PrintWriter out) {
    this.out = out;
  }

  /** What the owner writes, the boat, the cautions, and everything that can be done. */
  void beginning(Drill drill) {
    Boat boat = drill.fault().fitting().boat();
    out.println("DRILL: " + drill.fault().page().title() + ", " + boat.name());
    out.println(
        boat.model().title()
            + ", built "
            + boat.built()
            + ", "
            + boat.water().spoken()
            + " water, "
            + boat.use().spoken());
    out.println();
    drill.letter().forEach(out::println);
    out.println();
    new CautionsText(out).print(drill.cautions(), CautionsRead.NONE);
    choices(drill);
  }

  /** Everything that can be done, with its minutes. */
  void choices(Drill drill) {
    out.println("Cautions: take the step of each before the work it is for.");
    drill.cautions().forEach(each -> out.println("  caution " + each.id()));
    out.println("Checks:");
    for (FaultCheck check : drill.fault().checks()) {
      out.println(
          "  check "
              + check.id()
              + "  "
              + check.ask()
              + " "
              + cost(check.minutes(), check.access(), check.cautions())
              + (check.check().skill().ownerMay()
                  ? ""
                  : ", work " + SkillWords.whose(check.check().skill())));
      check.check().safety().ifPresent(safe -> out.println("    safe " + check.id() + "  " + safe));
    }
    out.println("Mends, with how sure you are in per cent:");
    for (FaultCause cause : drill.fault().causes()) {
      if (!cause.isSomethingElse()) {
        out.println("  mend " + cause.id() + " …  " + cause.title() + ": " + mend(cause));
      }
    }
    out.println(
        "  yard CAUSE …  Hand it over and name the cause: "
            + Minutes.words(drill.fault().yardMinutes())
            + ", "
            + Minutes.words(drill.fault().searchMinutes())
            + " more when it is another");
    if (!drill.fault().access().isEmpty()) {
      out.println("What is opened for a step stays open; it can be opened before:");
      for (Access access : drill.fault().access()) {
        out.println(
            "  open "
                + access.id()
                + "  "
                + access.title()
                + ", "
                + Minutes.words(access.minutes()));
      }
    }
    out.println(
        "  hint ("
            + (drill.order().hints() == 0 ? "none" : drill.order().hints())
            + " allowed)    give-up    list  shows this again");
  }

  private static String mend(FaultCause cause) {
    return cause.mendTitle()
        + ", "
        + cost(cause.mendMinutes(), cause.mendAccess(), cause.mendCautions())
        + (cause.mendedByOwner() ? "" : ", work " + SkillWords.whose(cause.mendSkill()));
  }

  private static String cost(double minutes, List<Access> access, List<WorkCaution> cautions) {
    return Minutes.words(minutes)
        + (access.isEmpty()
            ? ""
            : ", needs " + String.join(" and ", access.stream().map(Access::id).toList()))
        + (cautions.isEmpty() ? "" : ", caution " + String.join(" and ", DrillView.ids(cautions)));
  }

  /** What came of a step. */
  void reply(DrillRun run, String hint) {
    StepDone last = run.last().orElseThrow();
    String said =
        switch (last.reply().kind()) {
          case ANSWER -> spoken(last.reply()) + ".";
          case HEEDED -> "Noted.";
          case HINT -> hint;
          case OPENED -> "Open: " + last.reply().said() + ".";
          default -> last.reply().said();
        };
    out.println(said + " (" + Minutes.words(run.minutes()) + " so far)");
    last.unheeded()
        .forEach(
            each ->
                out.println(
                    "You left out: " + each.title() + ". " + each.danger() + " " + each.rule()));
  }

  /** The marks, and each step gone through. */
  void mark(DrillMark mark) {
    out.println();
    out.println(
        "It was: "
            + mark.run().drill().hiddenCause().title()
            + (mark.run().ended() ? "" : " (the drill was not played to its end)"));
    out.println(
        "You took "
            + Minutes.words(mark.run().minutes())
            + "; the best plan would have taken "
            + Minutes.words(mark.plan().minutes())
            + " with the same fault and the same answers.");
    out.printf(
        Locale.ROOT,
        "Skill, luck apart: %.0f minutes lost on average against the best plan, which takes %.0f on"
            + " average (an estimate; the planner is within %.0f).%n",
        mark.regret(),
        mark.expected(),
        mark.doubt());
    if (mark.yardAtOnce()) {
      out.println("The yard was called at once, before anything was looked at.");
    }
    out.println(
        mark.dangers().isEmpty()
            ? "Nothing was done that could have hurt somebody."
            : CountWords.of(mark.dangers().size(), "thing") + " could have hurt somebody:");
    mark.dangers().forEach(each -> out.println("  DANGER: " + each.said()));
    certainty(mark.certainties());
    out.println();
    int number = 1;
    for (StepMark step : mark.steps()) {
      step(number++, step);
    }
  }

  private static String spoken(DrillReply reply) {
    return Sentences.capital(Sentences.spoken(reply.said()));
  }

  private void certainty(List<Certainty> said) {
    OptionalDouble brier = Certainty.brier(said);
    if (brier.isPresent()) {
      out.printf(
          Locale.ROOT,
          "How sure you were: Brier's score %.2f (0 best, 0.25 for always 50 %%), logarithmic %.2f"
              + " (0 best, 0.69).%n",
          brier.getAsDouble(),
          Certainty.logarithmic(said).orElseThrow());
    }
  }

  private void step(int number, StepMark step) {
    DrillReply reply = step.done().reply();
    if (reply.kind() == DrillReply.Kind.HEEDED) {
      out.println(number + ". " + step.done().step().text());
      return;
    }
    String said = reply.kind() == DrillReply.Kind.ANSWER ? spoken(reply) : reply.said();
    out.println(number + ". " + step.done().step().text() + (said.isEmpty() ? "" : ": " + said));
    out.println(
        "   Known before: "
            + String.join(
                ", ",
                step.known().stream()
                    .map(each -> each.title() + " " + PerCent.words(each.chance()))
                    .toList()));
    out.println("   Best: " + step.best().text());
    out.println("   " + Sentences.capital(step.best().why()));
    step.mistake()
        .map(MistakeKind::said)
        .ifPresent(
            wrong ->
                out.printf(Locale.ROOT, "   It cost %.0f minutes: %s.%n", step.regret(), wrong));
    if (!step.meaning().isEmpty()) {
      out.println("   " + step.meaning());
    }
  }
}
