package limberboard.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import limberboard.library.value.Work;
import limberboard.upkeep.IntervalEnd.Waits;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;
import limberboard.workings.QuantityWords;

/** Why work is due when it is. Data; in words only once an output asks, with its own days. */
public sealed interface Why {

  /**
   * In words: {@code 2 seasons since 12 Apr 2024; halved: used for charter}.
   *
   * @param day how a day is written
   */
  String said(Function<LocalDate, String> day);

  /** In words, with days as files have them. */
  default String said() {
    return said(LocalDate::toString);
  }

  /**
   * Its interval.
   *
   * @param since from when it runs
   * @param by the title of what {@code since} names
   * @param end when and how it ends
   * @param changes what shortened or lengthened it, in words: {@code halved: used for charter}
   * @param expires whether it runs out by its date even unused
   */
  record Runs(
      IntervalStart since, String by, IntervalEnd end, List<String> changes, boolean expires)
      implements Why {
    /** Copies the list. */
    public Runs {
      changes = List.copyOf(changes);
    }

    @Override
    public String said(Function<LocalDate, String> day) {
      List<String> parts = new ArrayList<>();
      parts.add(end.deciding().map(limit -> length(limit) + since(day)).orElseGet(this::open));
      parts.addAll(changes);
      if (end.deciding().filter(Limit::isEstimated).isPresent()) {
        parts.add("estimated from the log's readings");
      }
      if (end.waits() == Waits.FOR_AGE) {
        parts.add("begins only at this age of the boat");
      } else if (end.waits() == Waits.FOR_LAUNCH) {
        parts.add("rests while she is laid up");
      } else if (end.waits() == Waits.LEFT_UNDONE_AFLOAT) {
        parts.add(
            end.ranOut().map(ran -> "overdue since " + day.apply(ran) + ", ").orElse("")
                + "to be done once she is afloat");
      } else if (end.waits() == Waits.FOR_LAYING_UP) {
        parts.add("waits for the next laying up");
      }
      if (expires) {
        parts.add("runs out by its date even unused");
      }
      return String.join("; ", parts);
    }

    private String since(Function<LocalDate, String> day) {
      String on = since.known().map(how -> how.day(since.date())).orElse(day.apply(since.date()));
      String told = since.known().map(how -> " (" + how.from().sentence() + ")").orElse("");
      return switch (since.origin()) {
        case DONE -> " since " + on + told;
        case RESET, EVENT -> " since " + Sentences.quoted(by) + " on " + on + told;
        case NEW, NOT_KNOWN -> " since she was new on " + on + ", not in the log";
      };
    }

    static String length(Limit limit) {
      if (limit instanceof Limit.Calendar calendar) {
        return TimeWords.period(calendar.every());
      } else if (limit instanceof Limit.SeasonsAfloat afloat) {
        return QuantityWords.plain(afloat.seasons())
            + (afloat.seasons() == 1 ? " season" : " seasons");
      }
      Limit.Counted counted = (Limit.Counted) limit;
      String rate =
          counted.perSeason() > 0 ? ", about " + Math.round(counted.perSeason()) + " a season" : "";
      return Math.round(counted.allowed())
          + " "
          + counted.what()
          + " ("
          + Math.round(counted.used())
          + " gone"
          + rate
          + ")";
    }

    private String open() {
      if (end.limits().isEmpty()) {
        return "its page gives no interval that can be read; validate says where";
      }
      Optional<String> what =
          end.limits().stream()
              .filter(Limit.Counted.class::isInstance)
              .map(limit -> ((Limit.Counted) limit).what())
              .findFirst();
      return "the log has too few readings of "
          + what.orElse("what ends it")
          + " to tell; log one with its date";
    }
  }

  /**
   * Nobody knows when it was done: it is not in the log, and counted from new it would have been
   * over before the boat was bought.
   *
   * @param work what the work does
   * @param end when and how it ends, counted from new
   * @param changes what shortened or lengthened it
   */
  record NotKnown(Work work, IntervalEnd end, List<String> changes) implements Why {
    /** Copies the list. */
    public NotKnown {
      changes = List.copyOf(changes);
    }

    @Override
    public String said(Function<LocalDate, String> day) {
      List<String> parts = new ArrayList<>();
      end.deciding().map(Runs::length).ifPresent(parts::add);
      parts.addAll(changes);
      parts.add("not known when it was last done: " + advice());
      return String.join("; ", parts);
    }

    private String advice() {
      return switch (work) {
        case INSPECT -> "look now";
        case RENEW -> "find its date or ask, and log that; otherwise renew it";
        case SERVICE, MEND -> "look or ask, and log that; otherwise do it";
      };
    }
  }

  /**
   * Other work was done that is to be looked at again.
   *
   * @param after how long after it
   * @param work its title
   * @param done when it was done
   */
  record LookAgain(Period after, String work, LocalDate done) implements Why {
    @Override
    public String said(Function<LocalDate, String> day) {
      return TimeWords.period(after)
          + " after "
          + Sentences.quoted(work)
          + " on "
          + day.apply(done);
    }
  }

  /**
   * The look again, named where no title says that it is one.
   *
   * @param again the reason for it
   */
  record Named(LookAgain again) implements Why {
    @Override
    public String said(Function<LocalDate, String> day) {
      return "look again " + again.said(day);
    }
  }

  /**
   * It is not due yet.
   *
   * @param before the day before which it is not
   * @param then why it is then
   */
  record NotYet(LocalDate before, Why then) implements Why {
    @Override
    public String said(Function<LocalDate, String> day) {
      return "not before " + day.apply(before) + ": " + then.said(day);
    }
  }

  /**
   * Other work is due that does it as well.
   *
   * @param doer the title of that
   * @param itself why it would be due by itself
   */
  record DoneWith(String doer, Why itself) implements Why {
    @Override
    public String said(Function<LocalDate, String> day) {
      return "done with " + Sentences.quoted(doer) + "; by itself " + itself.said(day);
    }
  }
}
