package limberboard.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.library.problem.Problem;
import limberboard.library.value.Skill;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.DueSum;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start;
import limberboard.words.DayText;
import limberboard.words.Minutes;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** Says in a terminal what is due on a boat. */
final class DueText {
  private static final String BOUGHT = " --bought 2026-10-03";

  private final PrintWriter out;

  DueText(PrintWriter out) {
    this.out = out;
  }

  /** Prints it; what comes only after this season where that was asked for. */
  void print(Upkeep upkeep, List<Problem> questions, boolean coming) {
    Boat boat = upkeep.fitting().boat();
    AfloatSeason season = upkeep.thisSeason();
    out.println(
        boat.name()
            + ", "
            + boat.model().title()
            + ", on "
            + DayText.written(upkeep.fitting().on()));
    out.println(
        "Season "
            + season.label()
            + ": afloat from "
            + DayText.written(season.from())
            + " to "
            + DayText.written(season.to())
            + (upkeep.seasons().areAssumed() ? "; assumed, her file gives no season" : ""));
    questions.forEach(question -> out.println("Please look: " + question));
    new Start(upkeep)
        .hint(id -> "limberboard start --boat " + id + (boat.bought().isEmpty() ? BOUGHT : ""))
        .ifPresent(out::println);
    cautions(upkeep, coming);
    List.of(Group.OVERDUE, Group.NOT_KNOWN, Group.THIS_SEASON, Group.UNKNOWN, Group.OPTIONAL)
        .forEach(each -> group(each, upkeep));
    appointments(upkeep);
    if (coming) {
      group(Group.COMING, upkeep);
    } else if (!upkeep.of(Group.COMING).isEmpty()) {
      out.println();
      out.println(upkeep.of(Group.COMING).size() + " later; --coming lists them.");
    }
  }

  /** What can hurt in this work; each page says what to do about it before its steps. */
  private void cautions(Upkeep upkeep, boolean coming) {
    List<Due> booked = upkeep.appointments().all().stream().map(Appointed::due).toList();
    String titles =
        upkeep.all().stream()
            .filter(due -> coming || due.group() != Group.COMING || booked.contains(due))
            .flatMap(due -> upkeep.cautions(due.work()).stream())
            .map(WorkCaution::title)
            .distinct()
            .collect(Collectors.joining("; "));
    if (!titles.isEmpty()) {
      out.println("Cautions: " + titles + ". Each page says what to do before its steps.");
    }
  }

  private void group(Group group, Upkeep upkeep) {
    List<Due> due = upkeep.of(group);
    if (due.isEmpty()) {
      return;
    }
    out.println();
    DueSum sum = upkeep.sum(due);
    out.println(group.heading() + " (" + sum.works() + "; " + sum.time() + ")");
    group.meaning().ifPresent(meaning -> out.println("  " + meaning));
    for (Due each : due) {
      out.printf(
          "  %-17s  %s%s (%s%s)%n",
          each.lastDay().map(DayText::written).orElse(each.isKnown() ? "?" : "not known"),
          each.round().isPresent() ? "  with it: " : "",
          each.title(),
          Minutes.words(each.ownerMinutes()),
          each.skill() == Skill.OWNER ? "" : ", " + SkillWords.brief(each.skill()));
      out.printf(
          "                     left undone it %s%n                     %s; %s%n",
          each.matters(), each.why().said(DayText::written), doing(each));
      upkeep
          .doneBy(each)
          .map(doer -> "done with " + Sentences.quoted(doer.title()) + ", in no sum")
          .ifPresent(words -> out.println("                     " + words));
    }
  }

  /** Whom to call and when; the list of its own has the rest. */
  private void appointments(Upkeep upkeep) {
    Appointments appointments = upkeep.appointments();
    if (appointments.calls().isEmpty()) {
      return;
    }
    out.println();
    out.println("To be booked: " + appointments.sum() + " --appointments has more.");
    for (Appointments.Call call : appointments.calls()) {
      out.println("  " + call.said(DayText::written));
      for (Appointed each : call.all()) {
        out.println("    " + each.due().title() + ", " + each.whenToBook(DayText::written));
      }
    }
  }

  private static String doing(Due due) {
    return "do it "
        + due.phase().map(phase -> PhaseWords.of(phase) + ", ").orElse("")
        + "by "
        + DayText.written(due.plan())
        + ", page "
        + due.work().id();
  }
}
