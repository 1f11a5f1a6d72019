package limberboard.upkeep.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.words.CountWords;
import limberboard.words.Minutes;

/**
 * The days there are, in order, each once.
 *
 * @param days at least one, unless the remarks say why there is none
 * @param proposed whether nobody named them
 * @param remarks what was left out or taken differently, and why, in sentences
 */
public record FreeDays(List<FreeDay> days, boolean proposed, List<String> remarks) {
  /** Longer than this nobody is planned for on a day that was not named, in minutes. */
  private static final int LONGEST_DAY = 12 * 60;

  private static final int DAYS_OF_WEEKEND = 2;

  /** Copies the lists. */
  public FreeDays {
    days = List.copyOf(days);
    remarks = List.copyOf(remarks);
  }

  /** Minutes of all days together. */
  public int minutes() {
    return days.stream().mapToInt(FreeDay::minutes).sum();
  }

  /**
   * Proposes the days of whole weekends, the time split evenly: some of the next ones, the others
   * the last before the date. Where there is no weekend, every day until the date.
   *
   * @param minutes how much time there is, at least 1
   * @param from the first day
   * @param until the last day, not before the first
   * @param early how many of the days are the next ones, as far as there are so many; the others
   *     are the last ones
   * @param usual how many minutes a day at most, as long as there are days enough
   */
  public static FreeDays proposed(
      int minutes, LocalDate from, LocalDate until, int early, int usual) {
    List<LocalDate> free = new ArrayList<>(from.datesUntil(until.plusDays(1)).toList());
    boolean weekends = free.stream().anyMatch(FreeDays::isWeekend);
    free.removeIf(day -> weekends && !isWeekend(day));
    int wanted = minutes <= usual ? 1 : DAYS_OF_WEEKEND * up(minutes, DAYS_OF_WEEKEND * usual);
    int count = Math.min(wanted, free.size());
    int next = Math.min(early, count);
    List<LocalDate> chosen = new ArrayList<>(free.subList(0, next));
    chosen.addAll(free.subList(free.size() - count + next, free.size()));
    int used = (int) Math.min(minutes, (long) LONGEST_DAY * count);
    List<FreeDay> days = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      days.add(new FreeDay(chosen.get(i), used / count + (i < used % count ? 1 : 0)));
    }
    List<String> remarks = new ArrayList<>();
    remarks.add(
        "No free days were named, so "
            + CountWords.of(count, weekends ? "day of a weekend" : "day", "days")
            + " of weekends".repeat(weekends && count > 1 ? 1 : 0)
            + (count == 1 ? " is" : " are")
            + " proposed, "
            + Minutes.words(days.get(count - 1).minutes())
            + (count == 1 ? "" : " each")
            + "; name your own.");
    if (used < minutes) {
      remarks.add(
          "Until then there are only "
              + CountWords.of(count, "such day")
              + "; at twelve hours each, "
              + Minutes.words(used)
              + " of the "
              + Minutes.words(minutes)
              + " can be planned.");
    }
    return new FreeDays(days, true, remarks);
  }

  private static int up(int number, int by) {
    return (number + by - 1) / by;
  }

  private static boolean isWeekend(LocalDate day) {
    return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
  }
}
