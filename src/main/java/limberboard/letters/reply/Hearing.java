package limberboard.letters.reply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.boat.Fitting;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.WrittenAnswers;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.Passage;
import limberboard.letters.mail.Passage.Kind;
import limberboard.letters.recognise.Recogniser;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.GivenAnswer;

/**
 * What a letter tells of faults that earlier letters of its conversation told of: by the numbers of
 * our checks, or in words.
 *
 * @param answerable knows the pages and drafts
 * @param faults the faults so far
 * @param sent the text of our last answer, where that was kept
 */
record Hearing(Answerable answerable, List<ToldFault> faults, String sent) {
  private static final Pattern NUMBERS =
      Pattern.compile("(?m)(?<![\\p{L}\\p{N}.,:/-])\\d{1,2}\\s*[.):=–-]*\\s*\\p{L}");
  private static final double MAY_BE_FAULT = 0.2;

  /**
   * The answers that stand behind numbers of checks that we asked for: those of our answer as it is
   * quoted, else as it was kept, else as the program would write it.
   */
  Map<String, Map<String, Optional<String>>> numbered(Letter letter, Optional<Fitting> boat) {
    Map<String, Map<String, Optional<String>>> told = new LinkedHashMap<>();
    if (!faults.isEmpty() && NUMBERS.matcher(letter.own()).find()) {
      for (WrittenAnswers.Written each : WrittenAnswers.in(letter.own(), asked(letter, boat))) {
        told.computeIfAbsent(each.check().symptom(), symptom -> new LinkedHashMap<>())
            .put(each.check().check(), each.answer());
      }
      told.remove("");
    }
    return told;
  }

  private List<AskedCheck> asked(Letter letter, Optional<Fitting> boat) {
    String quoted = letter.of(Kind.QUOTED) + "\n" + letter.of(Kind.FORWARDED);
    for (String text : List.of(quoted, sent)) {
      List<AskedCheck> asked = NumberedChecks.in(text, answerable.pages(faults));
      if (!asked.isEmpty()) {
        return asked;
      }
    }
    return answerable.asked(faults, boat);
  }

  /**
   * The answers to the faults' checks that a letter gives in words when it is read behind the
   * letters before it, whose words say what it is about.
   */
  Map<String, List<GivenAnswer>> within(Letter letter, Recogniser recogniser, Recognition seen) {
    Map<String, List<GivenAnswer>> within = new LinkedHashMap<>();
    if (seen.fault() || seen.faultChance() >= MAY_BE_FAULT) {
      List<Passage> passages = new ArrayList<>();
      passages.add(new Passage(Kind.OWN, letter.own()));
      faults.forEach(fault -> passages.add(new Passage(Kind.OWN, answerable.words(fault))));
      Recognition whole =
          recogniser.recognise(new Letter(letter.head(), passages, List.of(), List.of()));
      for (ToldFault fault : faults) {
        List<GivenAnswer> own =
            whole.answers().getOrDefault(fault.symptom(), List.of()).stream()
                .filter(each -> each.words().end() <= seen.text().length())
                .toList();
        if (!own.isEmpty()) {
          within.put(fault.symptom(), own);
        }
      }
    }
    return within;
  }
}
