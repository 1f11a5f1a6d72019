package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * Reads the free days that a person named, such as {@code 20-21 Mar} or {@code 2027-03-20=6}: what
 * cannot be taken is said, and the rest is taken. Immutable.
 *
 * @param from the first day
 * @param until the last day
 */
public record FreeDaysReader(LocalDate from, LocalDate until) {
  private static final int DAY = 24 * 60;

  private static final Pattern BETWEEN = Pattern.compile("[,;&+]|\\s+and\\s+");
  private static final Pattern YEAR = Pattern.compile("\\d{4}(?:\\s*=.*)?");
  private static final Pattern WITH_HOURS =
      Pattern.compile("(.*\\S)\\s+(\\d{1,2}(?:[.:]\\d{1,2})?\\s*h(?:ours?)?)(?: each)?");

  /** A day as it was read; without minutes it takes a share of what is left. */
  private record Named(LocalDate day, OptionalInt minutes) {}

  /** Days as they were written, and the hours of each if any stand behind them. */
  private record Written(String days, Optional<String> hours) {
    static Written of(String word) {
      int sign = word.indexOf('=');
      Matcher hours = WITH_HOURS.matcher(word);
      if (sign >= 0) {
        return new Written(word.substring(0, sign), Optional.of(word.substring(sign + 1).strip()));
      }
      return hours.matches()
          ? new Written(hours.group(1), Optional.of(hours.group(2)))
          : new Written(word, Optional.empty());
    }

    /** Why the hours cannot be taken; empty when they can. */
    String wrongHours() {
      return hours
          .filter(text -> HoursText.minutes(text).filter(known -> known <= DAY).isEmpty())
          .map(
              text ->
                  Sentences.quoted(text)
                      + " are no hours of a day; write more than 0 and at most 24, such as 6 or"
                      + " 5:30.")
          .orElse("");
    }

    OptionalInt minutes() {
      return hours.flatMap(HoursText::minutes).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }
  }

  /**
   * Reads them.
   *
   * @param texts with commas or <em>and</em> between, each a day or several in a row such as {@code
   *     12-13 Dec}, with {@code =} and the hours of each behind if they are known
   * @param minutes the time there is in all; empty when each day has its own
   */
  public FreeDays read(List<String> texts, OptionalInt minutes) {
    List<String> remarks = new ArrayList<>();
    List<Named> all = new ArrayList<>();
    List<String> words = words(texts);
    Optional<YearMonth> month = Optional.empty();
    for (int i = words.size() - 1; i >= 0; i--) {
      Written written = Written.of(words.get(i));
      FreeDayWords.Row row = new FreeDayWords(from).read(written.days(), month);
      month = row.days().stream().findFirst().map(YearMonth::from).or(lasting(month));
      all.addAll(0, named(words.get(i), written, row, remarks));
    }
    Map<LocalDate, Named> days = new TreeMap<>(Comparator.naturalOrder());
    for (Named named : all) {
      if (days.putIfAbsent(named.day(), named) != null) {
        remarks.add(DayWords.of(named.day()) + " is named twice; the first time counts.");
      }
    }
    return shared(List.copyOf(days.values()), minutes, remarks);
  }

  private static Supplier<Optional<YearMonth>> lasting(Optional<YearMonth> month) {
    return () -> month;
  }

  /** What stands between commas; a year by itself belongs to what is before it. */
  private static List<String> words(List<String> texts) {
    List<String> words = new ArrayList<>();
    for (String word : BETWEEN.split(String.join(",", texts))) {
      String text = word.strip();
      int last = words.size() - 1;
      if (YEAR.matcher(text).matches() && last >= 0) {
        words.set(last, words.get(last) + " " + text);
      } else if (!text.isEmpty()) {
        words.add(text);
      }
    }
    return words;
  }

  private List<Named> named(
      String word, Written written, FreeDayWords.Row row, List<String> remarks) {
    String why = row.why().isEmpty() ? written.wrongHours() : row.why();
    if (!why.isEmpty()) {
      remarks.add(0, "Left out " + Sentences.quoted(word) + ": " + why);
      return List.of();
    }
    List<LocalDate> outside = row.days().stream().filter(day -> !outside(day).isEmpty()).toList();
    if (!outside.isEmpty()) {
      String days = outside.size() == row.days().size() ? "" : outside.size() + " of ";
      remarks.add(0, "Left out " + days + Sentences.quoted(word) + ": " + outside(outside.get(0)));
    }
    return row.days().stream()
        .filter(day -> !outside.contains(day))
        .map(day -> new Named(day, written.minutes()))
        .toList();
  }

  /** Why a day cannot be taken; empty when it can. */
  private String outside(LocalDate day) {
    if (day.isBefore(from)) {
      return DayWords.of(day) + " is past.";
    }
    return day.isAfter(until)
        ? DayWords.of(day) + " is after " + DayWords.of(until) + ", when all is to be done."
        : "";
  }

  /** Days without hours share what the others leave of the time. */
  private FreeDays shared(List<Named> named, OptionalInt minutes, List<String> remarks) {
    int known = named.stream().mapToInt(day -> day.minutes().orElse(0)).sum();
    long open = named.stream().filter(day -> day.minutes().isEmpty()).count();
    int rest = minutes.orElse(known) - known;
    List<FreeDay> days = new ArrayList<>();
    int number = 0;
    for (Named day : named) {
      if (day.minutes().isPresent()) {
        days.add(new FreeDay(day.day(), day.minutes().getAsInt()));
      } else if (rest > number) {
        int share = (int) (rest / open + (number < rest % open ? 1 : 0));
        days.add(new FreeDay(day.day(), Math.min(DAY, share)));
        number++;
      } else {
        remarks.add(
            "No time is left for " + DayWords.of(day.day()) + "; give it hours of its own.");
      }
    }
    FreeDays all = new FreeDays(days, false, List.of());
    if (minutes.isPresent() && !days.isEmpty() && all.minutes() != minutes.getAsInt()) {
      remarks.add(
          "The days come to "
              + Minutes.words(all.minutes())
              + ", not "
              + Minutes.words(minutes.getAsInt())
              + "; the days count.");
    }
    return new FreeDays(days, false, remarks);
  }
}
