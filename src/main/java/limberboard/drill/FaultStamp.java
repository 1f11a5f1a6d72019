package limberboard.drill;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import limberboard.effort.AnswerModel;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/**
 * Tells whether two faults are the same to the last figure: a result can only be marked on the
 * fault that it was played on. Words may be corrected without changing it.
 */
final class FaultStamp {
  private static final int LENGTH = 6;
  private static final double ROUNDING = 1e9;

  private FaultStamp() {}

  /** Twelve letters and digits. */
  static String of(Fault fault) {
    StringBuilder text = new StringBuilder(fault.page().id());
    AnswerModel answers = fault.model().answers();
    for (int cause = 0; cause < fault.causes().size(); cause++) {
      FaultCause each = fault.causes().get(cause);
      text.append('\n').append(each.id()).append(' ').append(each.mendSkill().word());
      number(text, answers.prior(cause), each.mendMinutes(), each.cures());
      each.mendCautions().forEach(caution -> text.append(' ').append(caution.id()));
      text.append(' ').append(each.seen());
    }
    for (int check = 0; check < fault.checks().size(); check++) {
      FaultCheck each = fault.checks().get(check);
      text.append('\n').append(each.id()).append(' ').append(each.check().skill().word());
      number(text, each.minutes(), fault.model().checks().get(check).cantTell());
      text.append(' ').append(each.check().comesFirst());
      each.cautions().forEach(caution -> text.append(' ').append(caution.id()));
      each.access().forEach(access -> text.append(' ').append(access.id()));
      for (int answer = 0; answer < each.answers().size(); answer++) {
        text.append(' ').append(each.answers().get(answer));
        for (int cause = 0; cause < answers.causes(); cause++) {
          number(text, answers.likelihood(check, answer, cause));
        }
      }
    }
    fault.access().forEach(access -> number(text.append('\n'), access.minutes()));
    fault.first().forEach(caution -> text.append(' ').append(caution.id()));
    number(text, fault.model().yardMinutes(), fault.model().searchMinutes());
    return digest(text.toString());
  }

  private static void number(StringBuilder text, double... numbers) {
    for (double number : numbers) {
      text.append(' ').append(Math.round(number * ROUNDING));
    }
  }

  private static String digest(String text) {
    try {
      byte[] all =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(all, 0, LENGTH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
