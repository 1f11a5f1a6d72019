package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.trace.Trace;
import limberboard.words.Sentences;

/**
 * Reads the answers that an owner writes back by the numbers of a draft's checks: {@code 1: salt},
 * {@code 2) cannot tell}, or several in one line. What does not name exactly one of the answers, or
 * denies it, is left to be read by a person. Stateless.
 */
public final class WrittenAnswers {
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}.,:/-])(\\d{1,2})\\s*(?:[.):=–-]+\\s*|\\s+)(?=[\\p{L}\"“'‘])");
  private static final Pattern CANT_TELL =
      Pattern.compile(
          "\\b(?:can ?not|can t|could ?n?o?t|couldn t) (?:really )?(?:tell|say|see)\\b"
              + "|\\b(?:do not|don t|dont) know\\b|\\bnot sure\\b|\\bno idea\\b|\\bunsure\\b");
  private static final Pattern DENIED = Pattern.compile("\\b(?:not|no|never|neither|isn t|n t)\\b");

  private WrittenAnswers() {}

  /**
   * An answer that was written back.
   *
   * @param check the check
   * @param answer its answer, as in the file; empty: it could not be told
   */
  public record Written(AskedCheck check, Optional<String> answer) {}

  /**
   * The answers in a text, in the order of the checks.
   *
   * @param text what the owner wrote, without what is quoted
   * @param questions what the draft had asked for, from number 1 on
   */
  public static List<Written> in(String text, List<AskedCheck> questions) {
    Map<Integer, String> said = new LinkedHashMap<>();
    for (String line : text.split("\\R")) {
      Matcher number = NUMBER.matcher(line);
      int open = 0;
      int from = 0;
      while (number.find()) {
        int named = Integer.parseInt(number.group(1));
        if (named >= 1 && named <= questions.size()) {
          take(said, open, line.substring(from, number.start()));
          open = named;
          from = number.end();
        }
      }
      take(said, open, line.substring(from));
    }
    List<Written> written = new ArrayList<>();
    for (int i = 0; i < questions.size(); i++) {
      read(questions.get(i), said.getOrDefault(i + 1, "")).ifPresent(written::add);
    }
    return written;
  }

  private static void take(Map<Integer, String> said, int number, String words) {
    if (number > 0) {
      said.merge(number, words, (one, other) -> one + " " + other);
    }
  }

  /** A trace after those of the answers that are about its symptom. */
  public static Trace told(Trace trace, List<Written> written) {
    Trace then = trace;
    for (Written each : written) {
      String check = each.check().check();
      if (each.check().symptom().equals(trace.fault().page().id())
          && trace.fault().hasCheck(check)) {
        Trace before = then;
        then =
            each.answer()
                .map(answer -> before.answer(check, answer))
                .orElseGet(() -> before.cantTell(check));
      }
    }
    return then;
  }

  private static Optional<Written> read(AskedCheck check, String words) {
    String said = plain(words);
    if (CANT_TELL.matcher(said).find()) {
      return Optional.of(new Written(check, Optional.empty()));
    }
    List<String> found = new ArrayList<>();
    String left = said;
    List<String> longestFirst = new ArrayList<>(check.answers());
    longestFirst.sort((one, other) -> other.length() - one.length());
    for (String answer : longestFirst) {
      String phrase = " " + plain(Sentences.spoken(answer)).strip() + " ";
      if (left.contains(phrase)) {
        found.add(answer);
        left = left.replace(phrase, "  ");
      }
    }
    return found.size() == 1 && !DENIED.matcher(left).find()
        ? Optional.of(new Written(check, Optional.of(found.get(0))))
        : Optional.empty();
  }

  /** Small letters and digits alone, with a space around each word. */
  private static String plain(String words) {
    return " " + words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip() + " ";
  }
}
