package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.library.page.Model.Zone;
import limberboard.library.value.Skill;
import limberboard.upkeep.Booking;
import limberboard.upkeep.plan.DueWork;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.Proof;
import limberboard.upkeep.plan.Undone;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.words.CountWords;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.OutsiderWords;
import limberboard.words.PerCent;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;
import limberboard.words.TimeWords;

/** A plan for the time there is, in words. Stateless. */
public final class PlanWords {
  /** What stands above what stays undone. */
  static final String UNDONE =
      "Where no other reason stands, there is not enough time; the gravest stands first.";

  private PlanWords() {}

  /** What the plan is called. */
  public static String title(WorkPlan plan) {
    return "Plan for "
        + plan.fitting().boat().name()
        + " until "
        + DayWords.of(plan.wish().until());
  }

  /** How much it is, and for whom. */
  public static String sum(WorkPlan plan) {
    int minutes = plan.days().stream().mapToInt(PlanDay::minutes).sum();
    return CountWords.of(plan.lines().count(), "piece of work", "pieces of work")
        + " in "
        + Minutes.words(minutes)
        + " of the "
        + Minutes.words(plan.wish().days().minutes())
        + " there are, "
        + forWhom(plan.wish().firstTime());
  }

  /** For whom minutes are. */
  static String forWhom(boolean firstTime) {
    return firstTime
        ? "as long as it takes the first time, half as much again as with practice"
        : "for a practised person; the first time takes half as much again";
  }

  /** How good the choice is. */
  public static String proof(Proof proof) {
    if (proof.all() == 0) {
      return "Nothing that is due is of danger.";
    }
    String share =
        "It takes out "
            + PerCent.words(proof.share())
            + " of the danger of all that is due, by the estimate of the pages. ";
    return share
        + (proof.isMostDanger()
            ? "No choice takes more danger out."
            : "It is the best that was found: another choice can take out at most "
                + proof.gap()
                + " % more.");
  }

  /** What is not to be done before what stays undone is done; empty when nothing forbids it. */
  public static List<String> forbids(WorkPlan plan) {
    return plan.forbidding().stream().map(undone -> forbids(plan, undone)).toList();
  }

  private static String forbids(WorkPlan plan, Undone undone) {
    return forbidding(plan, undone)
        + " before "
        + Sentences.quoted(undone.work().title())
        + " is done"
        + orKnown(undone.work())
        + ": left undone it "
        + undone.work().consequence().said()
        + ".";
  }

  /** What would do instead of work of which nobody knows when it was done; otherwise nothing. */
  static String orKnown(DueWork work) {
    return work.isNotKnown() && !work.isLook() ? ", or you know that it was done" : "";
  }

  /** How much of the plan nobody knows when it was done, and what that asks for; empty for none. */
  public static Optional<String> notKnown(WorkPlan plan) {
    long lines = plan.lines().filter(line -> line.work().isNotKnown()).count();
    return lines == 0
        ? Optional.empty()
        : Optional.of(
            "Of "
                + CountWords.of(lines, "line")
                + " nobody knows when it was last done. Before you renew or service, look for a"
                + " date or ask: what turns out to be in order is logged and gives its time back.");
  }

  /** What is not to be done before something that stays undone is done: {@code Do not launch}. */
  static String forbidding(WorkPlan plan, Undone undone) {
    if (undone.reason() == Undone.Reason.NEEDS_HER_AFLOAT) {
      return "After launching, do not leave the berth";
    }
    if (undone.reason() == Undone.Reason.FOR_LAYING_UP) {
      return "Do not let the frost come";
    }
    return plan.isAfloat() ? "Do not leave the berth" : "Do not launch";
  }

  /** How much work is needed, and what follows when it is left: for a line or a table. */
  public static String need(DueWork work) {
    return work.need().spoken() + ": left undone it " + work.consequence().said();
  }

  /** Why work stays undone. */
  public static String reason(Undone undone) {
    return switch (undone.reason()) {
      case NO_TIME -> "there is not enough time";
      case NO_DAY_LONG_ENOUGH -> "no day on which it could be done is long enough";
      case NEEDS_HER_ASHORE -> "it needs her ashore, and on these days she is afloat";
      case NEEDS_HER_AFLOAT -> "it needs her afloat, and on these days she is ashore";
      case FOR_LAYING_UP ->
          "it belongs to laying up, and these days come after the first half of the winter: do not"
              + " wait for them";
      case TOO_LATE_TO_BOOK ->
          "it has to be booked "
              + TimeWords.period(undone.work().book())
              + " before, which is too late for these days";
      case WAITS ->
          "it comes after " + Sentences.quoted(undone.waitsFor()) + ", which stays undone";
    };
  }

  /** That not all musts are done, and how long they take; empty when they are. */
  public static Optional<String> musts(WorkPlan plan) {
    int left = plan.mustsUndone().size();
    return left == 0
        ? Optional.empty()
        : Optional.of(
            CountWords.of(left, "must", "musts")
                + (left == 1 ? " stays" : " stay")
                + " undone. All the musts together take "
                + Minutes.words(plan.mustMinutes())
                + "; there are "
                + Minutes.words(plan.wish().days().minutes())
                + ".");
  }

  /** A day's heading: {@code Saturday, 20 Mar 2027}. */
  public static String day(PlanDay day) {
    String name = day.free().day().getDayOfWeek().name();
    return name.charAt(0)
        + name.substring(1).chars().mapToObj(c -> lower((char) c)).collect(Collectors.joining())
        + ", "
        + DayWords.of(day.free().day());
  }

  private static String lower(char letter) {
    return String.valueOf(Character.toLowerCase(letter));
  }

  /** How full a day is. */
  public static String sum(PlanDay day) {
    return day.lines().isEmpty()
        ? "Nothing that is due can be done on this day in " + Minutes.words(day.free().minutes())
        : Minutes.words(day.minutes())
            + " of "
            + Minutes.words(day.free().minutes())
            + (day.opening() == 0
                ? ""
                : ", of which " + Minutes.words(day.opening()) + " opening and closing");
  }

  /** How much has to be booked, and by when at the latest for the first; empty when nothing has. */
  public static Optional<String> appointments(WorkPlan plan) {
    List<Booking> bookings = new ArrayList<>();
    for (PlanDay day : plan.days()) {
      day.lines().stream()
          .flatMap(line -> booking(line, day, plan).stream())
          .forEach(bookings::add);
    }
    return bookings.stream()
        .min(Comparator.comparing(Booking::by))
        .map(
            first ->
                CountWords.of(bookings.size(), "appointment")
                    + " to book, the first: "
                    + first.said(DayWords::of)
                    + "; they stand below the days.");
  }

  private static Optional<Booking> booking(PlanLine line, PlanDay day, WorkPlan plan) {
    return line.work()
        .appointment()
        .map(with -> Booking.of(with, day.free().day(), plan.fitting().on()));
  }

  /** Whom a line is booked with, for when, and when to do that; empty for the owner's own work. */
  static Optional<String> appointment(PlanLine line, PlanDay day, WorkPlan plan) {
    return booking(line, day, plan)
        .map(
            booking ->
                Sentences.capital(OutsiderWords.of(line.work().appointment().orElseThrow().with()))
                    + ": "
                    + line.line().number()
                    + ". "
                    + line.work().title()
                    + ", for "
                    + DayWords.of(day.free().day())
                    + "; "
                    + booking.said(DayWords::of)
                    + ", "
                    + TimeWords.period(line.work().book())
                    + " before. Your own time "
                    + Minutes.words(line.minutes()));
  }

  /** What there is to know of a line: minutes, place, who, when. */
  public static List<String> facts(PlanLine line) {
    List<String> first = new ArrayList<>();
    first.add(Minutes.words(line.minutes()));
    line.line().zone().map(Zone::title).ifPresent(first::add);
    line.work()
        .appointment()
        .map(with -> "with " + OutsiderWords.of(with.with()))
        .or(
            () ->
                Optional.of(line.line().work().details().skill())
                    .filter(skill -> skill != Skill.OWNER)
                    .map(SkillWords::brief))
        .ifPresent(first::add);
    line.work().phase().map(PhaseWords::of).ifPresent(first::add);
    List<String> facts = new ArrayList<>();
    facts.add(String.join(" · ", first));
    facts.add(Sentences.capital(need(line.work())));
    if (line.work().isNotKnown()) {
      facts.add(
          line.work().isLook()
              ? "Not known when last looked at"
              : "Not known when last done: look or ask first");
    }
    if (!line.line().task().with().isEmpty()) {
      facts.add("With it: " + with(line));
    }
    if (!line.also().isEmpty()) {
      facts.add(
          "Does also: "
              + line.also().stream().map(DueWork::title).collect(Collectors.joining("; ")));
    }
    return facts;
  }

  /** What is done with a round. */
  private static String with(PlanLine line) {
    return line.line().task().with().stream()
        .map(each -> each.work().title())
        .collect(Collectors.joining("; "));
  }
}
