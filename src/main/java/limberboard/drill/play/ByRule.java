package limberboard.drill.play;

import java.util.List;
import java.util.Optional;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.DrillStep.Secure;
import limberboard.effort.Advice;
import limberboard.effort.Policy;
import limberboard.effort.Questionnaire;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/**
 * Plays by a fixed rule that sees the chances.
 *
 * @param rule the rule
 */
public record ByRule(Policy rule) implements Player {
  private static final double HUNDRED = 100;
  private static final double FOUND = 0.8;

  /** Asks what tells most until a cause is likely enough, then mends it: an able student. */
  public static ByRule mostTellingFirst() {
    return new ByRule(new Questionnaire(Questionnaire.Order.MOST_TELLING_FIRST, FOUND));
  }

  /** The same, but asks down the page. */
  public static ByRule downThePage() {
    return new ByRule(new Questionnaire(Questionnaire.Order.OF_THE_FILE, FOUND));
  }

  @Override
  public DrillStep next(DrillRun run) {
    Optional<FaultCheck> unsafe = run.unsafe().filter(run::isAsked);
    if (unsafe.isPresent()) {
      return new Secure(unsafe.get().id());
    }
    List<FaultCause> causes = run.drill().fault().causes();
    double[] chances = run.now().chances();
    Advice.Option option = rule.advise(run.drill().fault().model(), run.now()).best();
    return switch (option.action()) {
      case CHECK -> new Ask(run.drill().fault().checks().get(option.index()).id());
      case MEND -> new Mend(causes.get(option.index()).id(), sure(chances[option.index()]));
      case YARD -> {
        int named = 0;
        for (int cause = 1; cause < chances.length - 1; cause++) {
          named = chances[cause] > chances[named] ? cause : named;
        }
        yield causes.get(named).isSomethingElse()
            ? new HandOver(Optional.empty())
            : new HandOver(Optional.of(new Named(causes.get(named).id(), sure(chances[named]))));
      }
    };
  }

  private static int sure(double chance) {
    return (int) Math.round(HUNDRED * chance);
  }
}
