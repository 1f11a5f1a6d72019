package limberboard.trace;

import java.util.ArrayList;
import java.util.List;
import limberboard.words.ChanceWords;
import limberboard.words.CountWords;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * Says what an answer changed: the cause that gained most and the cause that lost most.
 *
 * @param causes the causes
 */
record Changes(List<FaultCause> causes) {
  private static final double WORTH_A_WORD = 0.01;
  private static final double WORTH_A_FACTOR = 1.75;
  private static final double WORTH_MORE = 1.2;
  private static final double UNLIKELY = 0.22;

  /**
   * One sentence.
   *
   * @param subject what changed the chances: "“Salt”"
   * @param before chances before
   * @param after chances after
   */
  String said(String subject, double[] before, double[] after) {
    int gained = 0;
    int lost = 0;
    for (int i = 0; i < after.length; i++) {
      gained = after[i] - before[i] > after[gained] - before[gained] ? i : gained;
      lost = before[i] - after[i] > before[lost] - after[lost] ? i : lost;
    }
    List<String> parts = new ArrayList<>();
    if (after[gained] - before[gained] >= WORTH_A_WORD) {
      parts.add(part(gained, before[gained], after[gained]));
    }
    if (before[lost] - after[lost] >= WORTH_A_WORD) {
      parts.add(part(lost, before[lost], after[lost]));
    }
    return parts.isEmpty()
        ? subject + " changes the chances by less than 1 %."
        : subject + " makes " + String.join(" and ", parts) + ".";
  }

  private String part(int cause, double before, double after) {
    return Sentences.quoted(causes.get(cause).title())
        + " "
        + how(before, after)
        + " ("
        + PerCent.words(before)
        + " to "
        + PerCent.words(after)
        + ")";
  }

  /** "three times as likely", for a factor of at least 1.75. */
  static String times(double factor) {
    long whole = Math.max(2, Math.round(factor));
    return (whole > 10 ? "more than ten times" : CountWords.times(whole)) + " as likely";
  }

  private static String how(double before, double after) {
    if (after >= before * WORTH_A_FACTOR) {
      return times(after / before);
    }
    boolean little = Math.max(before, after) < Math.min(before, after) * WORTH_MORE;
    if (after > before) {
      return little ? "a little likelier" : "likelier";
    }
    String word = ChanceWords.of(after);
    if (after < UNLIKELY && !word.equals(ChanceWords.of(before))) {
      return word;
    }
    return little ? "a little less likely" : "less likely";
  }
}
