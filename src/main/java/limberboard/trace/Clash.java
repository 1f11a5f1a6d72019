package limberboard.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.effort.AnswerModel;
import limberboard.trace.Contradiction.Against;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * Finds out whether answers go together. They do not when, by the answers alone,
 *
 * <ul>
 *   <li><i>something else</i> has become likelier than before and stands above one half: a cause
 *       that gives every answer with the same likelihood explains them better than all listed ones
 *       together; or
 *   <li>the answers are less than one tenth as likely together as they would be if each came by
 *       itself: ln(Π P(answer) ÷ P(all answers)) &gt; ln 10, the measure of F. V. Jensen, B.
 *       Chamberlain, T. Nordahl and F. Jensen, <i>Analysis in HUGIN of data conflict</i>,
 *       Uncertainty in Artificial Intelligence, 1990.
 * </ul>
 *
 * <p>An answer speaks against the leading listed cause when that cause would be likelier without
 * it.
 *
 * @param fault the fault
 * @param answers for each check its answer's number, or {@link AnswerModel#NOT_ANSWERED}
 */
record Clash(Fault fault, int[] answers) {
  /** Above this chance something else explains the answers better than the list does. */
  static final double UNLISTED = 0.5;

  /** Answers this many times less likely together than singly do not go together. */
  static final double APART = 10;

  /** The contradiction, if there is one. */
  Optional<Contradiction> found() {
    double[] chances = model().chances(answers);
    if (!isThere(chances)) {
      return Optional.empty();
    }
    int unlisted = chances.length - 1;
    int leading = 0;
    for (int cause = 1; cause < unlisted; cause++) {
      leading = chances[cause] > chances[leading] ? cause : leading;
    }
    List<Against> against = against(leading, chances[leading]);
    return Optional.of(
        new Contradiction(
            text(notOnTheList(chances), chances[unlisted], leading, against),
            fault.causes().get(leading),
            against));
  }

  /**
   * Whether there is one.
   *
   * @param chances the causes' chances by the answers
   */
  boolean isThere(double[] chances) {
    return chances.length > 1 && (notOnTheList(chances) || logApart() > Math.log(APART));
  }

  private boolean notOnTheList(double[] chances) {
    int unlisted = chances.length - 1;
    return chances[unlisted] > UNLISTED && chances[unlisted] > model().prior(unlisted);
  }

  private AnswerModel model() {
    return fault.model().answers();
  }

  private double logApart() {
    double singly = 0;
    for (int check = 0; check < answers.length; check++) {
      if (answers[check] != AnswerModel.NOT_ANSWERED) {
        double chance = 0;
        for (int cause = 0; cause < model().causes(); cause++) {
          chance += model().prior(cause) * model().likelihood(check, answers[check], cause);
        }
        singly += Math.log(chance);
      }
    }
    return singly - model().logEvidence(answers);
  }

  private List<Against> against(int leading, double chance) {
    List<Against> against = new ArrayList<>();
    int[] without = answers.clone();
    for (int check = 0; check < answers.length; check++) {
      if (answers[check] != AnswerModel.NOT_ANSWERED) {
        without[check] = AnswerModel.NOT_ANSWERED;
        double chanceWithout = model().chances(without)[leading];
        without[check] = answers[check];
        if (chanceWithout > chance) {
          FaultCheck asked = fault.checks().get(check);
          against.add(
              new Against(asked, asked.answers().get(answers[check]), chance, chanceWithout));
        }
      }
    }
    against.sort(Comparator.comparingDouble(Against::without).reversed());
    return against;
  }

  private String text(boolean notOnTheList, double unlisted, int leading, List<Against> against) {
    String what =
        notOnTheList
            ? "No cause on the list explains these answers: something else stands at "
                + PerCent.words(unlisted)
                + "."
            : "These answers hardly go together.";
    if (against.isEmpty()) {
      return what;
    }
    Against strongest = against.get(0);
    return what
        + " The answer "
        + Sentences.quoted(Sentences.spoken(strongest.answer()))
        + " to "
        + Sentences.quoted(strongest.check().ask())
        + " speaks most against "
        + Sentences.quoted(fault.causes().get(leading).title())
        + ", which would stand at "
        + PerCent.words(strongest.without())
        + " without it. Check it again.";
  }
}
