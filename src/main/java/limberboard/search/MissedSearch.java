package limberboard.search;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.library.value.Word;

/**
 * A search that was of no use.
 *
 * @param day the day
 * @param how why it was of no use
 * @param words what was looked for, in one line
 */
public record MissedSearch(LocalDate day, How how, String words) {
  private static final int SHORTEST = 3;
  private static final int LONGEST = 80;
  private static final Pattern PERSONAL = Pattern.compile("@|\\d[\\d ()/+-]{5,}\\d");
  private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\\u2028\\u2029]");

  /** Why a search was of no use. */
  public enum How implements Word {
    /** Nothing was found. */
    NOTHING,
    /** Something was found, and none of it was opened. */
    NOT_OPENED
  }

  /**
   * A search as it may be kept.
   *
   * @return empty for what is never kept: less than three letters, more than eighty (a letter that
   *     was pasted), several lines, and what has a mail address or a telephone number in it
   */
  public static Optional<MissedSearch> of(LocalDate day, How how, String typed) {
    String words = typed.strip().replaceAll(" +", " ");
    boolean kept =
        words.length() >= SHORTEST
            && words.length() <= LONGEST
            && words.codePoints().anyMatch(Character::isLetter)
            && !CONTROLS.matcher(words).find()
            && !PERSONAL.matcher(words).find();
    return kept ? Optional.of(new MissedSearch(day, how, words)) : Optional.empty();
  }
}
