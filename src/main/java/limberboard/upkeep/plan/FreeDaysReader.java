package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import limberboard.words.DayText;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * Reads the free days that a person named, such as {@code 2027-03-20=6}: what cannot be taken is
 * said, and the rest is taken. Immutable.
 *
 * @param from the first day
 * @param until the last day
 */
public record FreeDaysReader(LocalDate from, LocalDate until) {
  private static final int DAY = 24 * 60;

  /** A day as it was read; without minutes it takes a share of what is left. */
  private record Named(LocalDate day, OptionalInt minutes) {}

  /**
   * Reads them.
   *
   * @param words each a day, with {@code =} and its hours behind it if they are known
   * @param minutes the time there is in all; empty when each day has its own
   */
  public FreeDays read(List<String> words, OptionalInt minutes) {
    List<String> remarks = new ArrayList<>();
    Map<LocalDate, Named> days = new TreeMap<>(Comparator.naturalOrder());
    for (String word : words) {
      named(word.strip(), remarks)
          .ifPresent(
              named -> {
                if (days.putIfAbsent(named.day(), named) != null) {
                  remarks.add(DayWords.of(named.day()) + " is named twice; the first time counts.");
                }
              });
    }
    return shared(List.copyOf(days.values()), minutes, remarks);
  }

  private Optional<Named> named(String word, List<String> remarks) {
    int sign = word.indexOf('=');
    DayText.Read read = new DayText(from).read(sign < 0 ? word : word.substring(0, sign));
    Optional<Integer> hours =
        sign < 0 ? Optional.empty() : HoursText.minutes(word.substring(sign + 1));
    String why = read.day().map(this::outside).orElse(read.why());
    if (why.isEmpty() && sign >= 0 && hours.filter(known -> known <= DAY).isEmpty()) {
      why =
          Sentences.quoted(word.substring(sign + 1).strip())
              + " are no hours of a day; write more than 0 and at most 24, such as 6 or 5:30.";
    }
    if (!why.isEmpty()) {
      remarks.add("Left out " + Sentences.quoted(word) + ": " + why);
      return Optional.empty();
    }
    return read.day()
        .map(day -> new Named(day, hours.map(OptionalInt::of).orElseGet(OptionalInt::empty)));
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
