package limberboard.trace;

import java.util.List;
import java.util.Set;
import limberboard.effort.Advice.Option;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Seen;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.NextStep.MakeSafe;
import limberboard.words.ChanceWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/**
 * Turns an option into a step with its reason.
 *
 * @param fault the fault
 * @param chances the causes' chances now
 * @param open ids of access already open
 */
record Reasons(Fault fault, double[] chances, Set<String> open) {
  private static final double LIKELY = 0.5;
  private static final String FIRST =
      "It comes first for safety, whatever the cause turns out to be: nothing else is done before"
          + " it is safe.";

  /** The step that an option stands for. */
  NextStep step(Option option) {
    return switch (option.action()) {
      case CHECK -> check(option);
      case MEND -> mend(option);
      case YARD -> new CallYard(option.minutes(), yard(option.minutes()));
    };
  }

  /**
   * The step that an option stands for when it is taken instead of the best one: what it costs
   * more, and never that nothing else would pay.
   */
  NextStep instead(Option option, Option best) {
    NextStep proposed = step(best);
    double more = option.expectedMinutes() - best.expectedMinutes();
    String why =
        "It is not the step proposed, which is “"
            + proposed.text()
            + "”. With this one first it all takes about "
            + Minutes.words(option.expectedMinutes())
            + " on average"
            + (Math.round(more) > 0 ? ", " + Minutes.words(more) + " more." : ", no more.");
    NextStep step = step(option);
    if (step instanceof DoMend mend) {
      String chance =
          Sentences.quoted(mend.cause().title())
              + " is "
              + ChanceWords.of(chances[option.index()])
              + " ("
              + PerCent.words(chances[option.index()])
              + "). ";
      return new DoMend(mend.cause(), mend.minutes(), mend.toOpen(), chance + why);
    }
    return step instanceof CallYard ? new CallYard(option.minutes(), why) : step;
  }

  private NextStep check(Option option) {
    FaultCheck check = fault.checks().get(option.index());
    List<Access> toOpen = closed(check.access());
    String cost = cost(option.minutes(), toOpen);
    String why =
        switch (option.grounds()) {
          case SAFETY -> FIRST + " It takes " + cost + ".";
          case EFFORT ->
              cost + ", and " + new TellingApart(fault, chances).said(option.index()) + ".";
        };
    String who =
        check.check().skill().ownerMay()
            ? ""
            : " It is " + "work " + SkillWords.whose(check.check().skill()) + ".";
    return new DoCheck(check, option.minutes(), toOpen, why + who);
  }

  /** The step that makes safe what a check asks for that was not answered so. */
  static NextStep makeSafe(FaultCheck check) {
    return new MakeSafe(check, FIRST);
  }

  private NextStep mend(Option option) {
    FaultCause cause = fault.causes().get(option.index());
    List<Access> toOpen = closed(cause.mendAccess());
    double chance = chances[option.index()];
    String why =
        Sentences.quoted(cause.title())
            + " is "
            + ChanceWords.of(chance)
            + " ("
            + PerCent.words(chance)
            + "), mending it takes "
            + cost(option.minutes(), toOpen)
            + ", and no check that is left would save more time than it takes."
            + (cause.seen() == Seen.LATER ? " Whether it is cured shows only later." : "");
    return new DoMend(cause, option.minutes(), toOpen, why);
  }

  private String yard(double minutes) {
    int leading = 0;
    for (int i = 1; i < chances.length - 1; i++) {
      leading = chances[i] > chances[leading] ? i : leading;
    }
    FaultCause cause = fault.causes().get(leading);
    String otherwise =
        "No check or mend that is left is likely to save its own time; handing it over costs you "
            + Minutes.words(minutes)
            + ".";
    if (cause.isSomethingElse() || cause.mendedByOwner() || chances[leading] < LIKELY) {
      return otherwise;
    }
    return Sentences.quoted(cause.title())
        + " is "
        + ChanceWords.of(chances[leading])
        + " ("
        + PerCent.words(chances[leading])
        + "), and its mend, "
        + Sentences.quoted(cause.mendTitle())
        + ", is "
        + "work "
        + SkillWords.whose(cause.mendSkill())
        + ".";
  }

  /** "3 min", or "23 min with what has to be opened first (…)". */
  private static String cost(double minutes, List<Access> toOpen) {
    return Minutes.words(minutes)
        + (toOpen.isEmpty()
            ? ""
            : " with what has to be opened first ("
                + String.join("; ", toOpen.stream().map(Access::title).toList())
                + ")");
  }

  private List<Access> closed(List<Access> access) {
    return access.stream().filter(entry -> !open.contains(entry.id())).toList();
  }
}
