package limberboard.boat;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.words.DayText;

/**
 * How it is known that work was done which the owner neither did nor had done: of a boat that was
 * bought. In the log it is a word, {@code said}, with {@code month} or {@code year} behind it where
 * no more of the day is known; the entry then has the first day of the month or year, so that the
 * interval runs out rather too early than too late.
 *
 * @param from who or what tells
 * @param to how much of the day is known
 */
public record HowKnown(From from, To to) {

  /** Who or what tells that work was done. */
  public enum From {
    /** A surveyor's report. */
    SURVEY("survey", "a survey says so"),
    /** The bill of whoever did it. */
    BILL("bill", "by a bill"),
    /** The owner before, from memory or hearsay: the weakest. */
    SAID("said", "the previous owner said so, not checked"),
    /** A date or state that the owner has seen on the part itself. */
    SEEN("seen", "seen on the part");

    private final String word;
    private final String sentence;

    From(String word, String sentence) {
      this.word = word;
      this.sentence = sentence;
    }

    /** The word in the log. */
    public String word() {
      return word;
    }

    /** As a person reads it beside the entry. */
    public String sentence() {
      return sentence;
    }
  }

  /** How much of a day is known. */
  public enum To {
    /** The day. */
    DAY("", "d MMMM uuuu"),
    /** The month and the year. */
    MONTH("month", "MMMM uuuu"),
    /** The year only. */
    YEAR("year", "uuuu");

    private final String word;
    private final DateTimeFormatter form;

    To(String word, String form) {
      this.word = word;
      this.form = DateTimeFormatter.ofPattern(form, Locale.UK);
    }
  }

  /** Known to the day. */
  public HowKnown(From from) {
    this(from, To.DAY);
  }

  /** Reads a cell of the log that is not empty. */
  static Typed<HowKnown> read(String cell) {
    String[] words = cell.strip().toLowerCase(Locale.ROOT).split("\\s+");
    Optional<From> from =
        Stream.of(From.values()).filter(each -> each.word.equals(words[0])).findFirst();
    Optional<To> to =
        words.length == 1
            ? Optional.of(To.DAY)
            : Stream.of(To.MONTH, To.YEAR)
                .filter(each -> words.length == 2 && each.word.equals(words[1]))
                .findFirst();
    return from.isPresent() && to.isPresent()
        ? new Typed.Good<>(new HowKnown(from.get(), to.get()))
        : new Typed.Bad<>(
            "\"" + cell.strip() + "\" does not say how this is known",
            "write one of "
                + String.join(", ", words())
                + ", with month or year behind it where no more of the day is known");
  }

  private static List<String> words() {
    return Stream.of(From.values()).map(From::word).collect(Collectors.toList());
  }

  /** The cell of the log. */
  String written() {
    return (from.word + " " + to.word).strip();
  }

  /** The same of a day that somebody has written out. */
  public HowKnown toTheDay() {
    return new HowKnown(from, To.DAY);
  }

  /**
   * A day as far as it is known: {@code 20 May 2024}, {@code about May 2024}, {@code about 2024}.
   */
  public String day(LocalDate day) {
    return to == To.DAY ? DayText.written(day) : "about " + to.form.format(day);
  }
}
