package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.Appointment;
import limberboard.library.value.Outsider;
import limberboard.words.Minutes;
import limberboard.words.OutsiderWords;
import limberboard.words.SkillWords;

/**
 * An appointment: due work that somebody else does, and when it is to be booked. Whether work is
 * one, and by which day to book it, is decided here and nowhere else.
 *
 * @param due the work
 * @param with whom, and what it asks of the owner
 * @param booking when to book it; empty when the log does not tell when the work is due
 * @param on the day it is seen from
 */
public record Appointed(Due due, Appointment with, Optional<Booking> booking, LocalDate on) {
  /** First what is to be booked first; of what is to be booked now, what matters most. */
  static final Comparator<Appointed> FIRST_TO_BOOK =
      Comparator.<Appointed, LocalDate>comparing(
              each -> each.booking().map(Booking::day).orElse(LocalDate.MAX))
          .thenComparing(each -> each.due().consequence())
          .thenComparing(each -> each.due().need())
          .thenComparing(each -> each.booking().map(Booking::by).orElse(LocalDate.MAX))
          .thenComparing(each -> each.due().id());

  /** The appointment of due work, as on this day; nothing where the owner does it. */
  public static Optional<Appointed> of(Due due, LocalDate on) {
    return due.appointment().map(with -> new Appointed(due, with, booking(due, with, on), on));
  }

  /**
   * It is booked so long before the day on which it is planned. What ought to be done at once has
   * no such day: there the last day of its interval counts. No work is booked before it was last
   * done.
   */
  private static Optional<Booking> booking(Due due, Appointment with, LocalDate on) {
    if (due.runsOut().isEmpty()) {
      return Optional.empty();
    }
    LocalDate day = due.plan().isAfter(on) ? due.plan() : due.lastDay().orElse(due.plan());
    Booking booking = Booking.of(with, day, on);
    LocalDate since = due.since().date();
    return Optional.of(booking.by().isBefore(since) ? new Booking(since, on) : booking);
  }

  /** With whom. */
  public Outsider whom() {
    return with.with();
  }

  /** Whether it is to be booked today, or should have been before. */
  public boolean isNow() {
    return booking.filter(Booking::isNow).isPresent();
  }

  /** Whether it should have been booked before; never of what nobody knows when it was done. */
  public boolean isLate() {
    return isNow() && due.isKnown() && booking.get().by().isBefore(on);
  }

  /** The owner's own minutes, practised. */
  public int minutes() {
    return due.ownerMinutes();
  }

  /**
   * When to book: {@code book by 2 Mar 2027}.
   *
   * @param day how a day is written
   */
  public String whenToBook(Function<LocalDate, String> day) {
    if (booking.isEmpty()) {
      return "no day to book by: the log does not tell when it is due";
    }
    if (!due.isKnown() && isNow()) {
      return "book now" + (due.isLook() ? "" : ", unless you find that it was done");
    }
    return booking.get().said(day);
  }

  /** The same in two or three words, and without the day that is gone: {@code book now}. */
  public String whenInShort(Function<LocalDate, String> day) {
    return isNow() ? "book now" : booking.map(known -> known.said(day)).orElse("no day known");
  }

  /** With whom and when to book: {@code a rigger, book by 2 Mar 2027}. */
  public String withWhomAndWhen(Function<LocalDate, String> day) {
    return OutsiderWords.of(whom()) + ", " + whenInShort(day);
  }

  /** What it asks of the owner: {@code 20 min practised, 30 min the first time}. */
  public String ownTime() {
    return Minutes.forWhom(minutes());
  }

  /**
   * What of it an owner does or may do himself, as a sentence; empty where all of the work is
   * somebody else's. It is then that its cautions bite him.
   */
  public Optional<String> ownPart() {
    Procedure work = due.work().details();
    if (work.skill().ownerMay()) {
      return Optional.of("Or do it yourself: it is work for " + SkillWords.of(work.skill()) + ".");
    }
    return work.ownerParts().isEmpty()
        ? Optional.empty()
        : Optional.of("Your own part: " + String.join("; ", work.ownerParts()) + ".");
  }
}
