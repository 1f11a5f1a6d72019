package limberboard.letters.reply;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/**
 * Which number an answer of ours had given to which check, read from the answer itself as it is
 * quoted or kept, so that it does not matter what the program would ask today. Stateless.
 */
final class NumberedChecks {
  private static final Pattern QUOTES = Pattern.compile("(?m)^[ \\t]*(?:>[ \\t]*)+");
  private static final AskedCheck NONE = new AskedCheck("", "", List.of());

  private NumberedChecks() {}

  private record Found(AskedCheck check, int at) {}

  /**
   * The checks by their numbers, from 1; none where the text asks for none of these symptoms'
   * checks. Where an older answer is quoted below, the first counts.
   */
  static List<AskedCheck> in(String text, List<Page<Symptom>> symptoms) {
    String plain = plain(QUOTES.matcher(text).replaceAll(""));
    Map<Integer, Found> byNumber = new HashMap<>();
    for (Page<Symptom> symptom : symptoms) {
      for (Check check : symptom.details().checks()) {
        Pattern asked =
            Pattern.compile(
                "(?<![\\p{L}\\p{N}])(\\d{1,2})\\. " + Pattern.quote(plain(check.ask())));
        Matcher matcher = asked.matcher(plain);
        if (!check.ask().isBlank() && matcher.find()) {
          AskedCheck found = new AskedCheck(symptom.id(), check.id(), check.answers());
          byNumber.merge(
              Integer.parseInt(matcher.group(1)),
              new Found(found, matcher.start()),
              (one, other) -> one.at() <= other.at() ? one : other);
        }
      }
    }
    List<AskedCheck> checks = new ArrayList<>();
    int most = byNumber.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
    for (int number = 1; number <= most; number++) {
      checks.add(byNumber.containsKey(number) ? byNumber.get(number).check() : NONE);
    }
    return checks;
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
