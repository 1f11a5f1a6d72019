package limberboard.print.sheet;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.plan.DueWork;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.Undone;
import limberboard.upkeep.plan.WorkPlan;

/**
 * A plan as CSV after RFC 4180: a header line, then one line a piece of work, by day; then what
 * stays undone, without a day. Immutable.
 */
public final class PlanCsv {
  private static final String[] COLUMNS = {
    "number",
    "day",
    "page",
    "title",
    "with-it",
    "minutes",
    "need",
    "left-undone",
    "due",
    "with",
    "open",
    "close",
    "undone-because",
    "cautions"
  };

  private final Library library;

  /** Tables whose cautions are looked up in this library. */
  public PlanCsv(Library library) {
    this.library = library;
  }

  /** The plan; several accesses or cautions in one cell are separated by semicolons. */
  public String render(WorkPlan plan) {
    WorkCautions cautions = WorkCautions.on(library, plan.fitting());
    CsvTable csv = new CsvTable(COLUMNS);
    for (PlanDay day : plan.days()) {
      day.lines().forEach(line -> csv.row(cells(day, line, cautions)));
    }
    plan.undone().forEach(undone -> csv.row(cells(undone, plan, cautions)));
    return csv.text();
  }

  private static List<String> cells(PlanDay day, PlanLine planned, WorkCautions cautions) {
    ListLine line = planned.line();
    DueWork work = planned.work();
    return List.of(
        Integer.toString(line.number()),
        day.free().day().toString(),
        line.work().id(),
        work.title(),
        withIt(work),
        Integer.toString(planned.minutes()),
        work.need().word(),
        work.consequence().word(),
        work.lastDay().map(Object::toString).orElse(""),
        work.appointment().map(with -> with.with().word()).orElse(""),
        WorkListCsv.ids(line.open()),
        WorkListCsv.ids(line.close()),
        "",
        ids(work, cautions));
  }

  private static List<String> cells(Undone undone, WorkPlan plan, WorkCautions cautions) {
    DueWork work = undone.work();
    return List.of(
        "",
        "",
        work.work().id(),
        work.title(),
        withIt(work),
        Integer.toString(plan.wish().minutes(work.minutes())),
        work.need().word(),
        work.consequence().word(),
        work.lastDay().map(Object::toString).orElse(""),
        work.appointment().map(with -> with.with().word()).orElse(""),
        "",
        "",
        PlanWords.reason(undone),
        ids(work, cautions));
  }

  private static String ids(DueWork work, WorkCautions cautions) {
    return work.cautions(cautions).stream().map(WorkCaution::id).collect(Collectors.joining(";"));
  }

  /** Ids of the pages of what is done with a round. */
  private static String withIt(DueWork work) {
    return work.pages().stream().skip(1).map(Page::id).collect(Collectors.joining(";"));
  }
}
