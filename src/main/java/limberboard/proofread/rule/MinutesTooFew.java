package limberboard.proofread.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Condition;
import limberboard.proofread.text.Figure;
import limberboard.proofread.text.Measure;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;
import limberboard.words.Minutes;

/**
 * Minutes far below what the steps come to: the waits that the steps themselves name, of up to
 * twenty minutes each, and a minute a step. Of sections for some boats only the longest counts.
 */
final class MinutesTooFew implements WorkRule {
  private static final double LONGEST_WAIT = 20;
  private static final double FAR = 1.35;

  @Override
  public String name() {
    return "minutes";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    Page<?> page = job.page();
    if (!(page.details() instanceof Procedure work) || work.isRound()) {
      return List.of();
    }
    int least = (int) Math.round(least(job));
    return least > work.minutes() * FAR
        ? List.of(
            PageRemark.at(
                this,
                Gravity.STUMBLES,
                page,
                around.line(page, "/minutes"),
                "minutes",
                "is "
                    + Minutes.words(work.minutes())
                    + "; the waits in its steps and a minute a step come to "
                    + Minutes.words(least),
                "write about " + Minutes.words(least) + ", or take waits out of the steps"))
        : List.of();
  }

  private static double least(ReadWork job) {
    double always = 0;
    Map<String, Double> sections = new HashMap<>();
    for (TextPiece step : job.steps()) {
      double minutes = 1 + waits(step);
      if (step.only().stream().allMatch(Condition.ALWAYS::equals)) {
        always += minutes;
      } else {
        sections.merge(step.heading(), minutes, Double::sum);
      }
    }
    return always + sections.values().stream().mapToDouble(each -> each).max().orElse(0);
  }

  private static double waits(TextPiece step) {
    double waits = 0;
    for (Sentence sentence : step.sentences()) {
      if (!sentence.denies()) {
        for (Figure figure : Figure.in(sentence)) {
          boolean wait = figure.measure() == Measure.TIME && figure.most() <= LONGEST_WAIT;
          waits += wait ? figure.least() : 0;
        }
      }
    }
    return waits;
  }
}
