package limberboard.cases;

import java.util.List;
import java.util.Optional;
import limberboard.boat.RecordedCase;
import limberboard.cases.NextPages.Hint;
import limberboard.cases.NextPages.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.words.CountWords;
import limberboard.words.Sentences;

/** Whether the minutes of a procedure are those that cases took. Stateless. */
final class MinutesOff {
  private static final int FEWEST = 3;
  private static final double SURE = 2;
  private static final double FAR = 1.25;

  private MinutesOff() {}

  /**
   * Minutes are compared as ratios to the page's; they are off when the mean of the ratios'
   * logarithms lies more than two standard errors from 0, and the page a quarter or more from it.
   */
  static Optional<Hint> of(Page<Procedure> page, List<RecordedCase> own) {
    List<RecordedCase> timed =
        own.stream().filter(each -> each.end().mendMinutes().orElse(0) > 0).toList();
    double says = page.details().minutes();
    if (timed.size() < FEWEST || !(says > 0)) {
      return Optional.empty();
    }
    double[] logs =
        timed.stream()
            .mapToDouble(each -> Math.log(each.end().mendMinutes().orElseThrow() / says))
            .toArray();
    double mean = 0;
    for (double log : logs) {
      mean += log / logs.length;
    }
    double squares = 0;
    for (double log : logs) {
      squares += (log - mean) * (log - mean);
    }
    double error = Math.sqrt(squares / (logs.length - 1) / logs.length);
    if (Math.abs(mean) < Math.log(FAR) || Math.abs(mean) < SURE * error) {
      return Optional.empty();
    }
    long took = Math.round(says * Math.exp(mean));
    return Optional.of(
        new Hint(
            Kind.MINUTES_OFF,
            page.id(),
            "",
            timed.size(),
            "write " + took + " minutes on " + Sentences.quoted(page.title()),
            "it says "
                + Math.round(says)
                + " minutes; "
                + CountWords.of(timed.size(), "case")
                + " took about "
                + took
                + " on average",
            NextPages.examples(timed)));
  }
}
