package limberboard.desktop.upkeep.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.parts.Card;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.sheet.AppointmentsCsv;
import limberboard.print.sheet.AppointmentsSheet;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Appointments.Call;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.WhenDue;
import limberboard.words.DayText;
import limberboard.words.Sentences;

/** What is to be booked for the chosen boat, in words. For the event thread only. */
final class AppointmentsModel {
  private final SheetModel<Boolean, Booked> sheet;

  AppointmentsModel(UpkeepModel upkeep, Background background) {
    sheet = new SheetModel<>(upkeep, background, false, AppointmentsModel::make);
  }

  /**
   * A line of the list.
   *
   * @param page the page of the work
   * @param card what it says
   */
  record Line(String page, Card card) {}

  /**
   * What came of it.
   *
   * @param lines the lines, call by call
   * @param sum how much it is; empty when nothing is listed
   * @param rest what comes later, or that nothing is to be booked
   * @param later how many come later and are not listed
   * @param sheet the sheet
   */
  record Booked(List<Line> lines, String sum, String rest, int later, Made sheet)
      implements HasSheet {
    /** Copies the list. */
    Booked {
      lines = List.copyOf(lines);
    }
  }

  /** The sheet. */
  SheetModel<Boolean, Booked> sheet() {
    return sheet;
  }

  /** What is to be booked; empty until it has been worked out. */
  Optional<Booked> booked() {
    return sheet.made();
  }

  /** Whether what is to be booked only after this season is listed too. */
  boolean isLaterShown() {
    return sheet.choice();
  }

  /** Lists what is to be booked only after this season, or no longer. */
  void turnLater() {
    sheet.choose(!sheet.choice());
  }

  private static Booked make(Workspace workspace, Upkeep upkeep, boolean later) {
    Appointments appointments = upkeep.appointments(later);
    List<Line> lines = new ArrayList<>();
    for (Call call : appointments.calls()) {
      String heading = call.said(DayText::written);
      for (Appointed each : call.all()) {
        Card card = card(each, upkeep);
        lines.add(new Line(each.due().work().id(), card.under(heading)));
        heading = "";
      }
    }
    return new Booked(
        lines,
        lines.isEmpty() ? "" : appointments.sum(),
        appointments.rest(DayText::written),
        appointments.later().size(),
        new Made(
            "appointments-" + upkeep.fitting().boat().id(),
            AppointmentsSheet.of(upkeep, appointments),
            () -> AppointmentsSheet.onPaper(upkeep, appointments),
            () -> AppointmentsCsv.of(upkeep, appointments),
            ""));
  }

  private static Card card(Appointed each, Upkeep upkeep) {
    WhenDue when = new WhenDue(each.due(), each.on());
    List<String> cautions =
        upkeep.cautions(each.due().work()).stream().map(WorkCaution::title).toList();
    List<String> detail = new ArrayList<>();
    detail.add(Sentences.capital(each.whenToBook(DayText::written)) + ".");
    detail.add(when.plan(DayText::written) + ".");
    detail.add("Left undone it " + each.due().matters() + ".");
    if (!cautions.isEmpty()) {
      detail.add("Caution: " + String.join("; ", cautions) + ".");
    }
    String note =
        "Your own time: " + each.ownTime() + "." + each.ownPart().map(" "::concat).orElse("");
    return Card.of(each.due().title(), String.join(" ", detail))
        .ofKind(when.state(DayText::written))
        .noting(note);
  }
}
