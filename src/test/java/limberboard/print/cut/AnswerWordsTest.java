package limberboard.print.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.value.Likelihood;
import limberboard.print.text.InlineText;
import org.junit.jupiter.api.Test;

/** What answers say, in words; shares by the file formats' rule, worked out by hand. */
class AnswerWordsTest {
  private static final List<String> SHORT = List.of("seal", "hose");

  @Test
  void anAnswerSpeaksForWhatItIsFoundWithAndAgainstTheRest() {
    // salt: 77 per cent against 1 per cent; fresh gets what is left, 23 and 99 per cent
    AnswerWords words =
        words(SHORT, Map.of("salt", Map.of("seal", "usually", "hose", "never")), "salt", "fresh");
    assertThat(said(words, "salt"))
        .isEqualTo("Speaks for: Seal (usually).\nSpeaks against: Hose (never).");
    assertThat(said(words, "fresh"))
        .isEqualTo("Speaks for: Hose (always).\nSpeaks against: Seal (sometimes).");
  }

  @Test
  void likelihoodsThatComeToMoreThanOneAreDividedByTheirSum() {
    // 0.77 and 0.77 are one half each: neither answer tells anything
    AnswerWords words =
        words(
            SHORT,
            Map.of("salt", Map.of("seal", "usually"), "fresh", Map.of("seal", "usually")),
            "salt",
            "fresh");
    assertThat(said(words, "salt")).isEqualTo("Tells nothing by itself.");
  }

  @Test
  void othersAreAnyOtherCause() {
    AnswerWords words =
        words(
            SHORT, Map.of("salt", Map.of("seal", "usually", "others", "rarely")), "salt", "fresh");
    assertThat(said(words, "salt"))
        .isEqualTo("Speaks for: Seal (usually).\nSpeaks against: any other cause (rarely).");
  }

  @Test
  void aLongListIsSaidByWhatIsNotOnIt() {
    List<String> causes = List.of("a", "b", "c", "d", "e", "f");
    Map<String, String> finds = new LinkedHashMap<>();
    causes.forEach(cause -> finds.put(cause, "never"));
    finds.put("f", "always");
    AnswerWords one = words(causes, Map.of("yes", finds), "yes", "no");
    assertThat(said(one, "yes")).isEqualTo("Speaks for: F (always).\nSpeaks against all others.");
    finds.put("f", "even");
    AnswerWords other = words(causes, Map.of("yes", finds), "yes", "no");
    assertThat(said(other, "yes")).isEqualTo("Speaks against all but: F.");
  }

  private static String said(AnswerWords words, String answer) {
    return InlineText.of(words.of(answer));
  }

  private static AnswerWords words(
      List<String> causes, Map<String, Map<String, String>> finds, String... answers) {
    Map<String, Map<String, Likelihood>> read = new LinkedHashMap<>();
    finds.forEach(
        (answer, likelihoods) -> {
          Map<String, Likelihood> row = new LinkedHashMap<>();
          likelihoods.forEach((cause, word) -> row.put(cause, Likelihood.parse(word)));
          read.put(answer, row);
        });
    Check check =
        new Check(
            "c",
            "Ask?",
            "How.",
            null,
            1.0,
            null,
            null,
            null,
            null,
            null,
            List.of(answers),
            read,
            null,
            null,
            false,
            null,
            null);
    List<Cause> listed = new ArrayList<>();
    for (String id : causes) {
      String title = id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
      listed.add(new Cause(id, title, null, null, 1.0, null, "mend", null, null));
    }
    return new AnswerWords(check, listed);
  }
}
