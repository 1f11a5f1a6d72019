package limberboard.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.upkeep.FollowUps.FollowUp;
import limberboard.upkeep.IntervalEnd.Waits;
import limberboard.words.TimeWords;

/**
 * Says why work is due when it is: {@code 2 seasons since 2024-04-12; halved: used for charter}.
 */
final class Why {
  private final Library library;

  Why(Library library) {
    this.library = library;
  }

  /** The reason for work with an interval. */
  String of(RunningInterval running, IntervalStart since, IntervalEnd runsOut) {
    List<String> parts = new ArrayList<>();
    parts.add(runsOut.deciding().map(limit -> limit(limit, since)).orElseGet(() -> open(runsOut)));
    parts.addAll(running.rhythm().changes());
    if (runsOut.deciding().filter(Limit::isEstimated).isPresent()) {
      parts.add("estimated from the log's readings");
    }
    if (runsOut.waits() == Waits.FOR_AGE) {
      parts.add("begins only at this age of the boat");
    } else if (runsOut.waits() == Waits.FOR_LAUNCH) {
      parts.add("rests while she is laid up");
    } else if (runsOut.waits() == Waits.FOR_LAYING_UP) {
      parts.add("waits for the next laying up");
    }
    if (running.expires()) {
      parts.add("runs out by its date even unused");
    }
    return String.join("; ", parts);
  }

  /** The reason for a look again. */
  String of(FollowUp followUp) {
    return TimeWords.period(followUp.length())
        + " after “"
        + followUp.work().title()
        + "” on "
        + followUp.done();
  }

  private String limit(Limit limit, IntervalStart since) {
    return length(limit) + " " + since(since);
  }

  private static String length(Limit limit) {
    if (limit instanceof Limit.Calendar calendar) {
      return TimeWords.period(calendar.every());
    } else if (limit instanceof Limit.SeasonsAfloat afloat) {
      return number(afloat.seasons()) + (afloat.seasons() == 1 ? " season" : " seasons");
    }
    Limit.Counted counted = (Limit.Counted) limit;
    String rate =
        counted.perSeason() > 0 ? ", about " + Math.round(counted.perSeason()) + " a season" : "";
    return number(Math.round(counted.allowed()))
        + " "
        + counted.what()
        + " ("
        + Math.round(counted.used())
        + " gone"
        + rate
        + ")";
  }

  private String since(IntervalStart since) {
    return switch (since.origin()) {
      case DONE -> "since " + since.date();
      case RESET -> "since “" + title(since.by()) + "” on " + since.date();
      case EVENT -> "since “" + title(since.by()) + "” on " + since.date();
      case NEW -> "since she was new on " + since.date() + ", not in the log";
    };
  }

  private String title(String word) {
    return library.procedure(word).map(Page::title).orElse(word.replace('-', ' '));
  }

  private static String open(IntervalEnd runsOut) {
    if (runsOut.limits().isEmpty()) {
      return "its page gives no interval that can be read; validate says where";
    }
    Optional<String> what =
        runsOut.limits().stream()
            .filter(Limit.Counted.class::isInstance)
            .map(limit -> ((Limit.Counted) limit).what())
            .findFirst();
    return "the log has too few readings of "
        + what.orElse("what ends it")
        + " to tell; log one with its date";
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%s", value);
  }
}
