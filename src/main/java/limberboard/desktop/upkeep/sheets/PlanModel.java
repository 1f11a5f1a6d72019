package limberboard.desktop.upkeep.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.upkeep.sheets.ListModel.Line;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.PlanCsv;
import limberboard.print.sheet.PlanSheet;
import limberboard.print.sheet.PlanWords;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.plan.HoursText;
import limberboard.upkeep.plan.PlanAnswer;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.PlanOrder;
import limberboard.upkeep.plan.Planning;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.words.DayText;

/** The plan for the time there is, of the chosen boat. For the event thread only. */
final class PlanModel {
  private static final String BEGIN =
      "Write how many hours there are and until when, your free days if you know them, and press"
          + " Enter. Then this says which of the due work to do on which day, and what stays"
          + " undone. Ctrl+S plans it and saves the plan as PDF.";
  private static final String HOURS =
      "Hours are a number greater than 0, such as 16, 5.5 or 5:30. ";

  private final UpkeepModel upkeep;
  private final SheetModel<Ask, Drawn> sheet;

  PlanModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    this.sheet = new SheetModel<>(upkeep, background, new Ask("", "", "", false), PlanModel::make);
  }

  /**
   * What is asked for, as it was typed.
   *
   * @param hours how many hours there are
   * @param until the day by which it is to be done; empty for the usual one
   * @param days free days, with commas between
   * @param firstTime whether the work is done for the first time
   */
  record Ask(String hours, String until, String days, boolean firstTime) {}

  /**
   * What came of it.
   *
   * @param ask what was asked for
   * @param lines the lines to be ticked, by day; none without a plan
   * @param plan the plan, if one could be made
   * @param sheet the sheet
   */
  record Drawn(Ask ask, List<Line> lines, Optional<WorkPlan> plan, Made sheet) implements HasSheet {
    /** Copies the list. */
    Drawn {
      lines = List.copyOf(lines);
    }
  }

  /** The sheet. */
  SheetModel<Ask, Drawn> sheet() {
    return sheet;
  }

  /** The lines to be ticked, by day. */
  List<Line> lines() {
    return sheet.made().map(Drawn::lines).orElse(List.of());
  }

  /** The plan; empty until one is made. */
  Optional<WorkPlan> plan() {
    return sheet.made().flatMap(Drawn::plan);
  }

  /** Whether what is shown answers what was asked last. */
  boolean isAnswered() {
    return sheet.made().filter(made -> made.ask().equals(sheet.choice())).isPresent();
  }

  /** The day until which is planned where nobody says: a usual one, in words; empty before that. */
  Optional<String> usualUntil() {
    return upkeep.upkeep().map(known -> DayText.written(usualUntil(known)));
  }

  /** Plans. */
  void ask(Ask asked) {
    sheet.choose(asked);
  }

  private static LocalDate usualUntil(Upkeep upkeep) {
    return new Planning(upkeep).usualUntil();
  }

  private static Drawn make(Workspace workspace, Upkeep upkeep, Ask ask) {
    if (ask.hours().isBlank() && ask.days().isBlank()) {
      return without(ask, BEGIN);
    }
    Optional<Integer> minutes = HoursText.minutes(ask.hours());
    if (!ask.hours().isBlank() && minutes.isEmpty()) {
      return without(ask, HOURS);
    }
    DayText.Read until = new DayText(upkeep.fitting().on()).read(ask.until());
    if (!ask.until().isBlank() && until.day().isEmpty()) {
      return without(ask, until.why());
    }
    PlanOrder order =
        new PlanOrder(
            minutes.map(OptionalInt::of).orElseGet(OptionalInt::empty),
            until.day().orElseGet(() -> usualUntil(upkeep)),
            ask.days().isBlank() ? List.of() : List.of(ask.days()),
            ask.firstTime());
    PlanAnswer answer = new Planning(upkeep).answer(order);
    return answer instanceof PlanAnswer.Made made
        ? drawn(ask, made.plan(), workspace)
        : without(ask, ((PlanAnswer.Refused) answer).why());
  }

  private static Drawn without(Ask ask, String why) {
    CutPage empty =
        new CutPage("plan", limberboard.library.page.Kind.TOPIC, "Plan", "", "", List.of());
    return new Drawn(
        ask, List.of(), Optional.empty(), new Made("plan", empty, () -> empty, () -> "", why));
  }

  private static Drawn drawn(Ask ask, WorkPlan plan, Workspace workspace) {
    PlanSheet sheets = new PlanSheet(workspace.library());
    Made made =
        new Made(
            "plan-" + plan.fitting().boat().id() + "-" + plan.wish().until(),
            sheets.of(plan),
            () -> sheets.onPaper(plan),
            () -> new PlanCsv(workspace.library()).render(plan),
            "");
    return new Drawn(ask, lines(plan), Optional.of(plan), made);
  }

  private static List<Line> lines(WorkPlan plan) {
    List<Line> lines = new ArrayList<>();
    for (PlanDay day : plan.days()) {
      String heading = PlanWords.day(day);
      for (PlanLine line : day.lines()) {
        for (Due due : line.work().dues()) {
          lines.add(
              new Line(
                  due.id(),
                  line.line().work().id(),
                  heading,
                  line.line().number() + ". " + due.title(),
                  String.join(". ", PlanWords.facts(line))));
          heading = "";
        }
      }
    }
    return lines;
  }
}
