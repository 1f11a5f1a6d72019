package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.page.Kind;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Appointments.Call;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.WhenDue;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * What is to be booked with others, as a sheet to have beside the telephone: call by call, with a
 * box to tick for each piece of work, what of it is the owner's own, and its cautions by name; at
 * the end each caution with its danger and rule. Stateless.
 */
public final class AppointmentsSheet {
  private static final String WHOLE =
      "The page of each job has the whole text. What is for the licensed stays theirs.";

  private AppointmentsSheet() {}

  /** The sheet for a window and a terminal: what is due, and what is to be booked of it. */
  public static CutPage of(Upkeep upkeep, Appointments appointments) {
    return sheet(upkeep, appointments, false);
  }

  /** The sheet for paper, set close. */
  public static CutPage onPaper(Upkeep upkeep, Appointments appointments) {
    return sheet(upkeep, appointments, true);
  }

  private static CutPage sheet(Upkeep upkeep, Appointments appointments, boolean onPaper) {
    List<Part> parts = new ArrayList<>();
    parts.add(purpose(appointments));
    Map<String, List<String>> at = new HashMap<>();
    int lines = 0;
    for (Call call : appointments.calls()) {
      parts.add(call(call, upkeep, at, lines, onPaper));
      lines += call.all().size();
    }
    Cautions.atEnd(
            cautions(upkeep, appointments),
            caution -> "at " + String.join(", ", at.get(caution.id())),
            WHOLE)
        .ifPresent(parts::add);
    return new CutPage(
        "appointments-" + upkeep.fitting().boat().id(),
        Kind.TOPIC,
        "to book",
        "To be booked for " + upkeep.fitting().boat().name(),
        "On " + DayWords.of(upkeep.fitting().on()) + ", the first call first",
        PageCutter.cutFor(upkeep.fitting().boat()),
        parts);
  }

  private static Part purpose(Appointments appointments) {
    List<Block> blocks = new ArrayList<>();
    if (!appointments.calls().isEmpty()) {
      blocks.add(Block.Paragraph.of(Sentences.capital(appointments.sum())));
    }
    String rest = appointments.rest(DayWords::of);
    if (!rest.isEmpty()) {
      blocks.add(Block.Paragraph.of(rest));
    }
    return new Part(Part.Role.FACTS, "", blocks);
  }

  /** The lines of a call, numbered through all calls; notes at which each caution stands. */
  private static Part call(
      Call call, Upkeep upkeep, Map<String, List<String>> at, int before, boolean onPaper) {
    List<Block> blocks = new ArrayList<>();
    if (call.all().size() > 1) {
      blocks.add(
          Block.Paragraph.of("Your own time in all: " + Minutes.forWhom(call.minutes()) + "."));
    }
    List<Block.Tick> ticks = new ArrayList<>();
    for (Appointed each : call.all()) {
      String number = Integer.toString(before + ticks.size() + 1);
      List<WorkCaution> cautions = upkeep.cautions(each.due().work());
      cautions.forEach(one -> at.computeIfAbsent(one.id(), id -> new ArrayList<>()).add(number));
      ticks.add(tick(number, each, cautions, onPaper));
    }
    blocks.add(new Block.TickList(ticks, 0, onPaper));
    return new Part(Part.Role.WORK, call.said(DayWords::of), blocks);
  }

  private static Block.Tick tick(
      String number, Appointed each, List<WorkCaution> cautions, boolean onPaper) {
    WhenDue when = new WhenDue(each.due(), each.on());
    List<String> facts =
        List.of(
            Sentences.capital(each.whenToBook(DayWords::of)),
            when.state(DayWords::of),
            when.plan(DayWords::of),
            "Left undone it " + each.due().matters(),
            "Your own time " + each.ownTime());
    List<Block.Fact> beside = new ArrayList<>();
    each.ownPart().ifPresent(part -> beside.add(Block.Fact.of("You", part)));
    Cautions.beside(cautions).ifPresent(beside::add);
    return new Block.Tick(
        number,
        List.of(new Inline.PageLink(each.due().work().id(), Inline.text(each.due().title()))),
        onPaper
            ? List.of(facts.stream().map(Sentences::lowered).collect(Collectors.joining(" · ")))
            : facts,
        beside);
  }

  private static List<WorkCaution> cautions(Upkeep upkeep, Appointments appointments) {
    return WorkCautions.joined(
        appointments.all().stream().map(each -> upkeep.cautions(each.due().work())).toList());
  }
}
