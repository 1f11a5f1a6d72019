package limberboard.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import limberboard.library.value.Outsider;
import limberboard.upkeep.Due.Group;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.OutsiderWords;
import limberboard.words.Sentences;

/**
 * What is to be booked with others for a boat, by the calls that book it: one call to a person for
 * all that falls near together, by the day of the first. Immutable.
 *
 * @param calls what is to be booked, the first call first
 * @param later what is left out because it is to be booked only after this season, the first first
 */
public record Appointments(List<Call> calls, List<Appointed> later) {
  /** What is to be booked with the same person within this time is booked with one call. */
  public static final Period NEAR = Period.ofWeeks(4);

  private static final Set<Group> NOW = EnumSet.complementOf(EnumSet.of(Group.COMING));

  /** Copies the lists. */
  public Appointments {
    calls = List.copyOf(calls);
    later = List.copyOf(later);
  }

  /**
   * A call to somebody.
   *
   * @param whom who is called
   * @param all what it books, at least one, the first to be booked first
   */
  public record Call(Outsider whom, List<Appointed> all) {
    /** Copies the list. */
    public Call {
      all = List.copyOf(all);
    }

    /** When to call; empty when no day can be told. */
    public Optional<Booking> booking() {
      return all.get(0).booking();
    }

    /** The owner's own minutes of all of it, practised. */
    public int minutes() {
      return all.stream().mapToInt(Appointed::minutes).sum();
    }

    /**
     * Whom to call, when, and that one call is enough: {@code The yard: one call by 2 Mar 2027
     * books these two, which fall near together}.
     *
     * @param day how a day is written
     */
    public String said(Function<LocalDate, String> day) {
      String who = Sentences.capital(OutsiderWords.of(whom)) + ": ";
      if (booking().isEmpty()) {
        return who + "no day to book by can be told";
      }
      Booking first = booking().get();
      String when = first.isNow() ? "now" : "by " + day.apply(first.by());
      return all.size() == 1
          ? who + "call " + when
          : who
              + "one call "
              + when
              + " books these "
              + CountWords.word(all.size())
              + ", which fall near together";
    }

    private boolean takes(Appointed each) {
      boolean sameWhom = each.whom() == whom;
      if (booking().isEmpty() || each.booking().isEmpty()) {
        return sameWhom && booking().isEmpty() && each.booking().isEmpty();
      }
      LocalDate near = booking().get().day().plus(NEAR);
      return sameWhom && !each.booking().get().day().isAfter(near);
    }

    private Call with(Appointed each) {
      return new Call(whom, Stream.concat(all.stream(), Stream.of(each)).toList());
    }
  }

  /**
   * The appointments of a boat.
   *
   * @param upkeep what is due
   * @param coming whether to include also what is to be booked only after this season
   */
  static Appointments of(Upkeep upkeep, boolean coming) {
    LocalDate on = upkeep.fitting().on();
    LocalDate last = upkeep.thisSeason().to();
    List<Appointed> listed = new ArrayList<>();
    List<Appointed> later = new ArrayList<>();
    for (Group group : Group.values()) {
      upkeep.of(group).stream()
          .flatMap(due -> Appointed.of(due, on).stream())
          .forEach(
              each ->
                  (coming || NOW.contains(group) || isBefore(last, each) ? listed : later)
                      .add(each));
    }
    later.sort(Appointed.FIRST_TO_BOOK);
    return new Appointments(calls(listed.stream().sorted(Appointed.FIRST_TO_BOOK).toList()), later);
  }

  private static boolean isBefore(LocalDate last, Appointed each) {
    return each.booking().filter(booking -> !booking.day().isAfter(last)).isPresent();
  }

  private static List<Call> calls(List<Appointed> sorted) {
    List<Call> calls = new ArrayList<>();
    for (Appointed each : sorted) {
      int at = 0;
      while (at < calls.size() && !calls.get(at).takes(each)) {
        at++;
      }
      if (at < calls.size()) {
        calls.set(at, calls.get(at).with(each));
      } else {
        calls.add(new Call(each.whom(), List.of(each)));
      }
    }
    return calls;
  }

  /** What is to be booked, call by call. */
  public List<Appointed> all() {
    return calls.stream().flatMap(call -> call.all().stream()).toList();
  }

  /** How many are to be booked today, or should have been before. */
  public long now() {
    return all().stream().filter(Appointed::isNow).count();
  }

  /** The owner's own minutes of all of them, practised. */
  public int minutes() {
    return calls.stream().mapToInt(Call::minutes).sum();
  }

  /** How many there are, in how many calls, and what they ask of the owner; a sentence. */
  public String sum() {
    int count = all().size();
    String now = now() == count && count > 1 ? ", all to be booked now" : now(count);
    return CountWords.of(count, "appointment")
        + (calls.size() == count ? "" : " in " + CountWords.of(calls.size(), "call"))
        + now
        + ". Your own time: "
        + Minutes.forWhom(minutes())
        + ".";
  }

  private String now(int count) {
    return now() == 0 ? "" : count == 1 ? ", to be booked now" : ", " + now() + " of them now";
  }

  /**
   * What comes later, or that nothing is to be booked; empty where there is nothing to say.
   *
   * @param day how a day is written
   */
  public String rest(Function<LocalDate, String> day) {
    String nothing =
        calls.isEmpty()
            ? "Nothing is to be booked: what is due now and this season is the owner's own work."
            : "";
    String then =
        later.isEmpty()
            ? ""
            : CountWords.of(later.size(), "appointment")
                + (later.size() == 1 ? " comes" : " come")
                + " after this season, the first with "
                + later.get(0).withWhomAndWhen(day)
                + ": "
                + Sentences.quoted(later.get(0).due().title())
                + ".";
    return (nothing + " " + then).strip();
  }
}
