package limberboard.drill.mark;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.StepDone;
import limberboard.effort.Situation;
import limberboard.trace.Fault;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/** What was known before a step and what its answer changed, by the chances. Stateless. */
final class StepMeaning {
  private static final int SHOWN = 3;
  private static final double NOTICED = 0.01;

  private StepMeaning() {}

  /** The likeliest causes. */
  static List<StepMark.Known> known(Fault fault, Situation now) {
    double[] chances = now.chances();
    return IntStream.range(0, chances.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer cause) -> -chances[cause]))
        .limit(SHOWN)
        .map(
            cause ->
                new StepMark.Known(
                    fault.causes().get(cause).id(),
                    fault.causes().get(cause).title(),
                    chances[cause]))
        .toList();
  }

  /** What an answer, or a mend in vain, changed; nothing for what changes no chance. */
  static String of(Fault fault, StepDone done, Situation after) {
    if (done.reply().kind() != Kind.ANSWER && done.reply().kind() != Kind.NOT_CURED) {
      return "";
    }
    double[] was = done.before().chances();
    double[] is = after.chances();
    int up = 0;
    int down = 0;
    for (int cause = 1; cause < is.length; cause++) {
      up = is[cause] - was[cause] > is[up] - was[up] ? cause : up;
      down = is[cause] - was[cause] < is[down] - was[down] ? cause : down;
    }
    if (is[up] - was[up] < NOTICED) {
      return "It changes no chance by more than one in a hundred.";
    }
    return moved(fault, up, was, is, " rises from ")
        + ", "
        + moved(fault, down, was, is, " falls from ")
        + ".";
  }

  private static String moved(Fault fault, int cause, double[] was, double[] is, String how) {
    return Sentences.quoted(fault.causes().get(cause).title())
        + how
        + PerCent.words(was[cause])
        + " to "
        + PerCent.words(is[cause]);
  }
}
