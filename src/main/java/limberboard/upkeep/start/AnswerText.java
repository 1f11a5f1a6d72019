package limberboard.upkeep.start;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.HowKnown;
import limberboard.boat.HowKnown.From;
import limberboard.boat.HowKnown.To;
import limberboard.boat.Typed;
import limberboard.upkeep.start.StartAnswer.Known;
import limberboard.words.DayText;

/**
 * Reads answers as people write them: {@code survey 12 Sep 2026}, {@code said 2023}, {@code bill
 * May 2024}, {@code seen 3.10.2026}, {@code not known}, {@code not aboard}. Immutable.
 *
 * @param boat whose answers they are; nothing was done on her before she was built
 * @param today the day that it is; nothing was done after it
 */
public record AnswerText(Boat boat, LocalDate today) {
  private static final List<DateTimeFormatter> MONTHS =
      List.of(form("uuuu-M"), form("M.uuuu"), form("M/uuuu"), form("MMM uuuu"), form("MMMM uuuu"));
  private static final String SEPTEMBER = "(?i)\\bsept\\b";
  private static final String RIGHT =
      "write one of survey, bill, said or seen and a day, a month or a year, such as said 2023 or"
          + " bill May 2024; or not known, or not aboard";

  private static DateTimeFormatter form(String pattern) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern)
        .toFormatter(Locale.ENGLISH);
  }

  /** Reads a whole answer. */
  public Typed<StartAnswer> read(String text) {
    String plain = text.strip().replaceAll("\\s+", " ");
    switch (plain.toLowerCase(Locale.ROOT)) {
      case "", "?", "not known", "unknown" -> {
        return new Typed.Good<>(StartAnswer.NOT_KNOWN);
      }
      case "none", "not aboard" -> {
        return new Typed.Good<>(StartAnswer.NOT_ABOARD);
      }
      default -> {
        String[] words = plain.split(" ", 2);
        Optional<From> from =
            Arrays.stream(From.values())
                .filter(each -> each.word().equalsIgnoreCase(words[0]))
                .findFirst();
        return from.isEmpty()
            ? new Typed.Bad<>("\"" + plain + "\" is no answer", RIGHT)
            : known(from.get(), words.length == 1 ? "" : words[1]).map(known -> known);
      }
    }
  }

  /**
   * Reads when something was done.
   *
   * @param from how it is known
   * @param when a day, a month with its year, or a year
   */
  public Typed<Known> known(From from, String when) {
    String plain = when.strip().replaceAll(SEPTEMBER, "Sep");
    if (plain.isEmpty()) {
      return new Typed.Bad<>("there is no day", "write a day, a month or a year, such as 2023");
    }
    if (plain.matches("\\d{4}")) {
      LocalDate first = LocalDate.of(Math.max(1, Integer.parseInt(plain)), 1, 1);
      return within(first, first.plusYears(1).minusDays(1), new HowKnown(from, To.YEAR));
    }
    Optional<YearMonth> month = month(plain);
    if (month.isPresent()) {
      LocalDate first = month.get().atDay(1);
      return within(first, month.get().atEndOfMonth(), new HowKnown(from, To.MONTH));
    }
    DayText.Read day = new DayText(today).read(plain);
    return day.day().isPresent()
        ? within(day.day().get(), day.day().get(), new HowKnown(from))
        : new Typed.Bad<>(
            "\"" + plain + "\" is no day, month or year",
            "write such as 12 Sep 2026, 9/2026, 2026");
  }

  private static Optional<YearMonth> month(String text) {
    for (DateTimeFormatter form : MONTHS) {
      try {
        return Optional.of(YearMonth.parse(text, form));
      } catch (DateTimeParseException e) {
        continue;
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private Typed<Known> within(LocalDate first, LocalDate last, HowKnown how) {
    if (first.isAfter(today)) {
      return new Typed.Bad<>(how.day(first) + " lies in the future", "write when it was done");
    }
    if (last.isBefore(boat.ageFrom())) {
      return new Typed.Bad<>(
          how.day(first) + " lies before she was new, in " + boat.ageFrom().getYear(),
          "write when it was done on her, or not known");
    }
    LocalDate day = first.isBefore(boat.ageFrom()) ? boat.ageFrom() : first;
    return new Typed.Good<>(new Known(day, how));
  }
}
