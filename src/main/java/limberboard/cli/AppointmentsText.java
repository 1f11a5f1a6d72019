package limberboard.cli;

import java.io.PrintWriter;
import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Appointments.Call;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.WhenDue;
import limberboard.words.DayText;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/** Says in a terminal what is to be booked with others, and when. */
final class AppointmentsText {
  private static final String INDENT = "      ";

  private final PrintWriter out;

  AppointmentsText(PrintWriter out) {
    this.out = out;
  }

  /** Prints it, call by call. */
  void print(Upkeep upkeep, Appointments appointments) {
    out.println(
        upkeep.fitting().boat().name()
            + ", "
            + upkeep.fitting().boat().model().title()
            + ", on "
            + DayText.written(upkeep.fitting().on()));
    if (!appointments.calls().isEmpty()) {
      out.println("To be booked: " + appointments.sum());
    }
    for (Call call : appointments.calls()) {
      out.println();
      String sum = call.all().size() == 1 ? "" : " (your own time " + time(call) + ")";
      out.println(call.said(DayText::written) + sum);
      call.all().forEach(each -> line(each, upkeep));
    }
    String rest = appointments.rest(DayText::written);
    if (!rest.isEmpty()) {
      out.println();
      out.println(rest + (appointments.later().isEmpty() ? "" : " --coming lists what comes."));
    }
  }

  private static String time(Call call) {
    return Minutes.forWhom(call.minutes());
  }

  private void line(Appointed each, Upkeep upkeep) {
    WhenDue when = new WhenDue(each.due(), each.on());
    out.println("  " + each.due().title() + ", " + each.whenToBook(DayText::written));
    say(
        when.state(DayText::written)
            + ". "
            + when.plan(DayText::written)
            + ". Left undone it "
            + each.due().matters()
            + ".");
    say("Your own time: " + each.ownTime() + ". Page " + each.due().work().id() + ".");
    say(Sentences.capital(each.due().why().said(DayText::written)) + ".");
    each.ownPart().ifPresent(this::say);
    cautions(each, upkeep.cautions(each.due().work()));
  }

  /** By name; where the owner does something himself, each with its danger and its rule. */
  private void cautions(Appointed each, List<WorkCaution> cautions) {
    if (each.ownPart().isPresent()) {
      cautions.forEach(
          one -> say("Caution: " + one.title() + ": " + one.danger() + " " + one.rule()));
    } else if (!cautions.isEmpty()) {
      say("Caution: " + String.join("; ", cautions.stream().map(WorkCaution::title).toList()));
    }
  }

  private void say(String words) {
    out.println(INDENT + words);
  }
}
