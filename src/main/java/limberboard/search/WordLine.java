package limberboard.search;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.library.problem.Limits;

/** What the lines of both words files have in common. */
final class WordLine {
  /** The longest phrase that is looked for, in words. */
  static final int MOST_WORDS = 6;

  private static final String NOT_UTF_8 = "\uFFFD";

  private WordLine() {}

  /** The line without comment and outer space; empty when there is nothing on it. */
  static String content(String line) {
    int comment = line.indexOf('#');
    return (comment < 0 ? line : line.substring(0, comment)).strip();
  }

  /** The phrases between commas, in lower case with single spaces. */
  static List<String> phrases(String list) {
    return Arrays.stream(list.split(",", -1)).map(WordLine::phrase).toList();
  }

  /** A phrase in lower case with single spaces. */
  static String phrase(String text) {
    return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /** What is said of a line with too many phrases. */
  static String tooMany(int phrases) {
    return "there are " + phrases + " phrases on one line, more than " + Limits.LINE_PHRASES;
  }

  /** What is wrong with a phrase, if anything. */
  static Optional<String> fault(String phrase) {
    if (phrase.isEmpty()) {
      return Optional.of("there is nothing between two commas");
    }
    if (phrase.length() > Limits.NAME_CHARACTERS) {
      return Optional.of("a phrase is longer than " + Limits.NAME_CHARACTERS + " characters");
    }
    if (phrase.contains(NOT_UTF_8)) {
      return Optional.of("\"" + phrase + "\" is not UTF-8 text");
    }
    if (phrase.chars().noneMatch(Character::isLetterOrDigit)) {
      return Optional.of("\"" + phrase + "\" has no letter");
    }
    if (phrase.split(" ").length > MOST_WORDS) {
      return Optional.of("\"" + phrase + "\" is longer than " + MOST_WORDS + " words");
    }
    return Optional.empty();
  }
}
