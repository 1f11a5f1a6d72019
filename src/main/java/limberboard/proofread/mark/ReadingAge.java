package limberboard.proofread.mark;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.function.Supplier;
import limberboard.library.page.Page;
import limberboard.library.page.ReadInFull;
import limberboard.library.value.Word;
import limberboard.words.DayText;
import limberboard.words.Sentences;

/**
 * A page that is to be read in full again: because nobody ever has, because it has changed since,
 * or because that was long ago. Immutable.
 *
 * @param page the page's id
 * @param file the page's file, relative to the workspace
 * @param because why
 * @param read when it was last read in full, if ever
 */
public record ReadingAge(String page, String file, Because because, Optional<ReadInFull> read) {
  /** How long a reading holds where the library says nothing else: two years. */
  public static final Period USUAL = Period.ofYears(2);

  /** Why a page is to be read. */
  public enum Because implements Word {
    /** Nobody has noted a reading. */
    NEVER,
    /** It has changed since. */
    CHANGED,
    /** That was long ago. */
    LONG_AGO
  }

  /**
   * Whether a page is to be read in full. A reading that was noted by hand, without a digest, holds
   * until it is long ago, since nothing tells what was read.
   *
   * @param text gives its whole text, with line ends {@code \n}; asked only where that matters
   * @param today the day it is
   * @param holds how long a reading holds
   */
  public static Optional<ReadingAge> of(
      Page<?> page, Supplier<String> text, LocalDate today, Period holds) {
    Optional<ReadInFull> read = page.head().read();
    if (read.isEmpty()) {
      return due(page, Because.NEVER);
    }
    String of = read.get().of();
    if (!of.isEmpty() && !of.equals(ReadMarks.digest(text.get()))) {
      return due(page, Because.CHANGED);
    }
    return read.get().on().plus(holds).isAfter(today)
        ? Optional.empty()
        : due(page, Because.LONG_AGO);
  }

  private static Optional<ReadingAge> due(Page<?> page, Because because) {
    return Optional.of(new ReadingAge(page.id(), page.path(), because, page.head().read()));
  }

  /** In a line, with its file. */
  public String line() {
    return file + ": " + Sentences.lowered(words());
  }

  /** In a sentence. */
  public String words() {
    return switch (because) {
      case NEVER -> "Has never been read in full.";
      case CHANGED -> "Has changed since it was read in full" + when() + ".";
      case LONG_AGO -> "Was last read in full" + when() + ".";
    };
  }

  private String when() {
    return read.map(last -> " on " + DayText.written(last.on()) + " by " + last.by()).orElse("");
  }
}
