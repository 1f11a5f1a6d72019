package limberboard.print.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.page.Kind;
import limberboard.library.problem.Problem;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.cut.PageParts;
import limberboard.print.drawing.TimeLineDrawing;
import limberboard.print.drawing.TimeLineWords;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.DueSum;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.OutsiderWords;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/**
 * What is due on a boat, as a sheet that any output can render: what is overdue, what is for this
 * season, what the log does not tell, and a time line of the coming seasons. Stateless.
 */
public final class DueSheet {
  private static final List<Group> NOW =
      List.of(Group.OVERDUE, Group.NOT_KNOWN, Group.THIS_SEASON, Group.UNKNOWN, Group.OPTIONAL);

  /** How much of a sheet the words above the drawing take, with some room to spare. */
  private static final double ABOVE = 250;

  private static final String WHOLE =
      "The page of each job has the whole text, before whose steps they stand again.";

  private DueSheet() {}

  /**
   * The sheet.
   *
   * @param upkeep what is due
   * @param doubts what is doubtful in the boat's files
   * @param seasons how many seasons the time line has, at least 1
   */
  public static CutPage of(Upkeep upkeep, List<Problem> doubts, int seasons) {
    Boat boat = upkeep.fitting().boat();
    LocalDate on = upkeep.fitting().on();
    List<Part> parts = new ArrayList<>();
    parts.add(
        PageParts.notice(
            "Before you begin",
            "Read the page of each job first. Work that is for somebody licensed stays theirs; here"
                + " it stands so that it is not forgotten."));
    new Start(upkeep)
        .hint(id -> "in the window under Upkeep, What is known, or limberboard start --boat " + id)
        .ifPresent(hint -> parts.add(PageParts.notice("Where to begin", hint)));
    if (!doubts.isEmpty()) {
      parts.add(doubts(doubts));
    }
    parts.add(summary(upkeep));
    NOW.stream()
        .filter(group -> !upkeep.of(group).isEmpty())
        .forEach(group -> parts.add(group(group, upkeep)));
    if (!upkeep.appointments().calls().isEmpty()) {
      parts.add(appointments(upkeep.appointments()));
    }
    parts.add(timeLine(TimeLine.of(upkeep, seasons)));
    Cautions.atEnd(cautions(upkeep, seasons), caution -> "", WHOLE).ifPresent(parts::add);
    return new CutPage(
        "due-" + boat.id(),
        Kind.PROCEDURE,
        "due",
        "What is due on " + boat.name(),
        "On " + DayWords.of(on) + ", from her log and the intervals of the pages that fit her",
        PageCutter.cutFor(boat),
        parts);
  }

  /** What can hurt in any work that the sheet names, the time line's included. */
  private static List<WorkCaution> cautions(Upkeep upkeep, int seasons) {
    int last = upkeep.thisSeason().year() + seasons - 1;
    List<Due> booked = upkeep.appointments().all().stream().map(Appointed::due).toList();
    return WorkCautions.joined(
        upkeep.all().stream()
            .filter(
                due -> NOW.contains(due.group()) || due.season() <= last || booked.contains(due))
            .map(due -> upkeep.cautions(due.work()))
            .toList());
  }

  private static Part doubts(List<Problem> doubts) {
    return new Part(
        Part.Role.NOTICE,
        "Please look at her files",
        List.of(
            Block.Items.dotted(
                doubts.stream().map(problem -> Inline.text(problem.toString())).toList())));
  }

  private static Part summary(Upkeep upkeep) {
    AfloatSeason season = upkeep.thisSeason();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(
        Block.Fact.of(
            "Season " + season.label(),
            "afloat from "
                + DayWords.of(season.from())
                + " to "
                + DayWords.of(season.to())
                + (upkeep.seasons().areAssumed() ? "; assumed, her file gives none" : "")));
    for (Group group : Group.values()) {
      if (!upkeep.of(group).isEmpty()) {
        facts.add(Block.Fact.of(group.heading(), count(upkeep.sum(upkeep.of(group)))));
      }
    }
    return new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts)));
  }

  private static String count(DueSum sum) {
    return sum.words() + " without opening what is in the way";
  }

  private static Part group(Group group, Upkeep upkeep) {
    List<Due> all = upkeep.of(group);
    List<List<List<Inline>>> rows = all.stream().map(due -> row(due, upkeep)).toList();
    List<Block> blocks = new ArrayList<>();
    group.meaning().map(Block.Paragraph::of).ifPresent(blocks::add);
    blocks.add(
        new Block.Table(
            List.of(Side.LEFT, Side.LEFT, Side.LEFT),
            List.of(Inline.text("What"), Inline.text("Runs out"), Inline.text("Why")),
            rows));
    return new Part(Part.Role.DUE, group.heading() + " (" + upkeep.sum(all).works() + ")", blocks);
  }

  private static List<List<Inline>> row(Due due, Upkeep upkeep) {
    String effort =
        Minutes.words(due.ownerMinutes())
            + ", "
            + SkillWords.brief(due.skill())
            + due.phase().map(phase -> ", " + PhaseWords.of(phase)).orElse("");
    List<Inline> what = new ArrayList<>();
    what.addAll(Inline.text(due.round().isPresent() ? "With it: " : ""));
    what.add(new Inline.Strong(Inline.text(due.title())));
    what.addAll(Inline.text(". " + effort));
    upkeep
        .doneBy(due)
        .map(doer -> ", done with " + Sentences.quoted(doer.title()) + " and in no sum")
        .ifPresent(words -> what.addAll(Inline.text(words)));
    Cautions.titles(upkeep.cautions(due.work()))
        .ifPresent(names -> what.add(new Inline.Text(". Caution: " + names)));
    String day =
        due.lastDay()
            .map(last -> (due.estimated() ? "about " : "") + DayWords.of(last))
            .orElse(due.isKnown() ? "?" : "not known");
    return List.of(what, Inline.text(day), Inline.text(why(due)));
  }

  private static String why(Due due) {
    return Sentences.capital(due.matters())
        + ". "
        + Sentences.capital(due.why().said(DayWords::of));
  }

  private static Part appointments(Appointments appointments) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Appointments.Call call : appointments.calls()) {
      for (Appointed each : call.all()) {
        rows.add(
            List.of(
                Inline.text(Sentences.capital(OutsiderWords.of(each.whom()))),
                Inline.text(each.due().title()),
                Inline.text(Sentences.capital(each.whenToBook(DayWords::of))),
                Inline.text(Minutes.words(each.minutes()))));
      }
    }
    return new Part(
        Part.Role.DUE,
        "To be booked (" + rows.size() + ")",
        List.of(
            Block.Paragraph.of(appointments.sum()),
            new Block.Table(
                List.of(Side.LEFT, Side.LEFT, Side.LEFT, Side.RIGHT),
                List.of(
                    Inline.text("With"),
                    Inline.text("For"),
                    Inline.text("When to book"),
                    Inline.text("Your own time")),
                rows)));
  }

  private static Part timeLine(TimeLine line) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Items.dotted(
            line.seasons().stream()
                .map(season -> Inline.text(TimeLineWords.season(season) + "."))
                .toList()));
    blocks.add(
        Block.Paragraph.of(
            "A dot is a day on which work is planned, if everything before it is done in time; a"
                + " triangle is work that is overdue, to be done now. A bar is work that comes"
                + " often. Shaded: afloat. The thin upright line is "
                + DayWords.of(line.on())
                + "."
                + (line.later() == 0
                    ? ""
                    : " " + line.later() + " more come only after these seasons.")));
    TimeLineDrawing.sheets(line, ABOVE)
        .forEach(svg -> blocks.add(new Block.Drawing(svg, TimeLineWords.summary(line))));
    return new Part(Part.Role.TIME_LINE, "The coming seasons", blocks);
  }
}
