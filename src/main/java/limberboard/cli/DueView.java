package limberboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.library.problem.Problem;
import limberboard.library.value.Phase;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Due;
import limberboard.upkeep.InRound;
import limberboard.upkeep.IntervalStart;
import limberboard.upkeep.Limit;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start;

/** What is due on a boat as {@code due --json} prints it; the keys are documented and stay. */
record DueView(
    String boat,
    String name,
    String on,
    SeasonView season,
    int laterEntries,
    List<String> questions,
    Optional<String> bought,
    String start,
    List<Item> due,
    List<AppointmentView> appointments) {

  /** Work that somebody else does. */
  record AppointmentView(String id, String with, int ownerMinutes, Optional<String> book) {
    static AppointmentView of(Appointed each) {
      return new AppointmentView(
          each.due().id(),
          each.whom().word(),
          each.minutes(),
          each.booking().map(booking -> booking.day().toString()));
    }
  }

  /** A season afloat. */
  record SeasonView(String label, String from, String to, boolean assumed) {
    static SeasonView of(AfloatSeason season, boolean assumed) {
      return new SeasonView(
          season.label(), season.from().toString(), season.to().toString(), assumed);
    }
  }

  /** From when an interval runs. */
  record SinceView(String date, String origin, String by) {
    static SinceView of(IntervalStart since) {
      return new SinceView(since.date().toString(), lower(since.origin()), since.by());
    }
  }

  /** One of the things that end an interval. */
  record LimitView(
      String kind,
      String allowed,
      Optional<Double> used,
      Optional<String> last,
      boolean estimated) {
    static LimitView of(Limit limit) {
      Optional<String> last = limit.last().map(Object::toString);
      if (limit instanceof Limit.Calendar calendar) {
        return new LimitView("every", calendar.every().toString(), Optional.empty(), last, false);
      } else if (limit instanceof Limit.SeasonsAfloat afloat) {
        String seasons = Double.toString(afloat.seasons());
        return new LimitView("seasons", seasons, Optional.empty(), last, false);
      }
      Limit.Counted counted = (Limit.Counted) limit;
      return new LimitView(
          counted.what().replace(' ', '-'),
          Double.toString(counted.allowed()),
          Optional.of(counted.used()),
          last,
          counted.isEstimated());
    }
  }

  /** One piece of work. */
  record Item(
      String id,
      String title,
      String page,
      String work,
      String skill,
      int minutes,
      int ownerMinutes,
      String leftUndone,
      String need,
      Optional<String> round,
      Optional<String> doneWith,
      String group,
      Optional<String> runsOut,
      String plan,
      Optional<String> phase,
      SinceView since,
      boolean estimated,
      boolean expires,
      String why,
      List<LimitView> limits,
      List<String> cautions) {
    static Item of(Due due, Upkeep upkeep) {
      return new Item(
          due.id(),
          due.title(),
          due.work().id(),
          due.work().details().work().word(),
          due.skill().word(),
          due.work().details().minutes(),
          due.ownerMinutes(),
          due.consequence().word(),
          due.need().word(),
          due.round().map(InRound::round),
          upkeep.doneBy(due).map(Due::id),
          lower(due.group()),
          due.lastDay().map(Object::toString),
          due.plan().toString(),
          due.phase().map(Phase::word),
          SinceView.of(due.since()),
          due.estimated(),
          due.expires(),
          due.why().said(),
          due.limits().stream().map(LimitView::of).toList(),
          upkeep.cautions(due.work()).stream().map(WorkCaution::id).toList());
    }
  }

  static DueView of(Upkeep upkeep, List<Problem> questions) {
    Boat boat = upkeep.fitting().boat();
    return new DueView(
        boat.id(),
        boat.name(),
        upkeep.fitting().on().toString(),
        SeasonView.of(upkeep.thisSeason(), upkeep.seasons().areAssumed()),
        upkeep.laterEntries(),
        questions.stream().map(Problem::toString).toList(),
        boat.bought().map(Object::toString),
        lower(new Start(upkeep).standing()),
        upkeep.all().stream().map(due -> Item.of(due, upkeep)).toList(),
        upkeep.appointments().all().stream().map(AppointmentView::of).toList());
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
