package limberboard.trace;

import java.util.stream.IntStream;
import limberboard.effort.AnswerModel;
import limberboard.words.Sentences;

/**
 * Finds what a check tells apart: the cause whose answers differ most from the others', weighted by
 * the chances, and whether that difference is mostly against one other cause.
 *
 * @param fault the fault
 * @param chances the causes' chances now
 */
record TellingApart(Fault fault, double[] chances) {
  private static final int LIKELIEST = 12;
  private static final double MOSTLY = 0.5;

  /** "it tells “…” from “…”", or "… from the others". */
  String said(int check) {
    int[] causes = likeliest();
    int apart = causes[0];
    double most = -1;
    for (int cause : causes) {
      double difference = chances[cause] * fromOthers(check, cause, causes);
      if (difference > most) {
        most = difference;
        apart = cause;
      }
    }
    int chosen = apart;
    int other = causes[0];
    double best = -1;
    for (int cause : causes) {
      double difference = chances[cause] * distance(check, chosen, cause);
      if (difference > best) {
        best = difference;
        other = cause;
      }
    }
    boolean oneOther = best > 0 && best >= MOSTLY * fromOthers(check, chosen, causes);
    return "it tells "
        + title(chosen)
        + " from "
        + (oneOther && other != chosen ? title(other) : "the others");
  }

  private String title(int cause) {
    return Sentences.quoted(fault.causes().get(cause).title());
  }

  private int[] likeliest() {
    return IntStream.range(0, chances.length)
        .boxed()
        .sorted((a, b) -> Double.compare(chances[b], chances[a]))
        .limit(LIKELIEST)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private double fromOthers(int check, int cause, int[] causes) {
    double sum = 0;
    for (int other : causes) {
      sum += chances[other] * distance(check, cause, other);
    }
    return sum;
  }

  /** How far two causes' answers lie apart, 0 to 1: half the sum of the differences. */
  private double distance(int check, int one, int other) {
    AnswerModel answers = fault.model().answers();
    double sum = 0;
    for (int answer = 0; answer < answers.answers(check); answer++) {
      sum +=
          Math.abs(
              answers.likelihood(check, answer, one) - answers.likelihood(check, answer, other));
    }
    return sum / 2;
  }
}
