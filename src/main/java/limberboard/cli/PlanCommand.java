package limberboard.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.calendar.PlanCalendar;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.sheet.PlanCsv;
import limberboard.print.sheet.PlanSheet;
import limberboard.print.sheet.ShoppingCsv;
import limberboard.print.sheet.ShoppingFor;
import limberboard.print.sheet.ShoppingSheet;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.plan.HoursText;
import limberboard.upkeep.plan.PlanAnswer;
import limberboard.upkeep.plan.PlanJobs;
import limberboard.upkeep.plan.PlanOrder;
import limberboard.upkeep.plan.Planning;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.upkeep.shopping.ShoppingList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code plan}: which of the due work to do in the time there is. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = {
      "Plans the due work of a boat for the hours there are before a date: what takes most danger"
          + " out, on which days, in which order; what stays undone, and what that means.",
      "As text if nothing else is asked for; --pdf for paper with boxes to tick."
    })
final class PlanCommand implements Callable<Integer> {
  private static final int WIDTH = 100;
  private static final String PDF = ".pdf";

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private DayOption on;
  @Mixin private ListOutput output;

  @Option(
      names = "--boat",
      paramLabel = "BOAT",
      required = true,
      description = "The boat, as for the other commands.")
  private String boat;

  @Option(
      names = "--hours",
      paramLabel = "HOURS",
      description = "How many hours there are in all, such as 16, 5.5 or 5:30.")
  private Optional<String> hours = Optional.empty();

  @Option(
      names = "--until",
      paramLabel = "DATE",
      required = true,
      description = "The day by which it is to be done.")
  private LocalDate until;

  @Option(
      names = "--days",
      paramLabel = "DAY[=HOURS]",
      description = {
        "Free days, with commas between: \"20-21 Mar, 10 Apr\", or each with its hours if they are"
            + " known: 2027-03-20=6,2027-03-21. Days without hours share what is left; without a"
            + " year the next such day is meant.",
        "If none are named, weekends before the date are proposed."
      })
  private List<String> days = List.of();

  @Option(
      names = "--first-time",
      description = "Reckon as long as the work takes the first time: half as much again.")
  private boolean firstTime;

  @Option(
      names = "--ics",
      paramLabel = "FILE",
      description = "Write the days as a calendar file (RFC 5545).")
  private Optional<Path> ics = Optional.empty();

  @Option(
      names = "--shopping",
      paramLabel = "FILE",
      description =
          "Write what to get for the work of the plan: A4 PDF if the name ends in .pdf, otherwise"
              + " CSV (RFC 4180).")
  private Optional<Path> shopping = Optional.empty();

  PlanCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Fitting fitting = on.in(session).fitting(read, Optional.of(boat)).orElseThrow();
    WorkPlan plan = plan(Upkeep.of(read.library(), fitting));
    OutFiles files = new OutFiles(session, folders, true);
    ics.ifPresent(file -> files.text(file, new PlanCalendar(read.library()).text(plan)));
    shopping.ifPresent(file -> shop(file, plan, read, files));
    PlanSheet sheets = new PlanSheet(read.library());
    output.put(
        session,
        folders,
        new ListOutput.Forms(
            () -> sheets.onPaper(plan),
            () -> new PlanCsv(read.library()).render(plan),
            () -> PlanView.of(plan, read.library()),
            () -> sheets.of(plan),
            WIDTH));
    return ExitCode.OK;
  }

  private WorkPlan plan(Upkeep upkeep) {
    OptionalInt minutes = hours.map(this::minutes).map(OptionalInt::of).orElse(OptionalInt.empty());
    PlanAnswer answer = new Planning(upkeep).answer(new PlanOrder(minutes, until, days, firstTime));
    if (answer instanceof PlanAnswer.Made made) {
      made.plan().wish().days().remarks().forEach(session.err()::println);
      return made.plan();
    }
    throw new Failure(ExitCode.USAGE, ((PlanAnswer.Refused) answer).why());
  }

  private int minutes(String text) {
    return HoursText.minutes(text)
        .orElseThrow(
            () ->
                new Failure(
                    ExitCode.USAGE,
                    "--hours is a number of hours greater than 0, such as 16, 5.5 or 5:30, not \""
                        + text
                        + "\""));
  }

  private static void shop(Path file, WorkPlan plan, Workspace read, OutFiles files) {
    ShoppingList list =
        ShoppingList.of(
            PlanJobs.of(plan), plan.fitting(), read.stock(plan.fitting().boat()), read.library());
    if (file.toString().endsWith(PDF)) {
      files.pdf(
          file, new ShoppingSheet(read.library()).onPaper(list, ShoppingFor.plan(plan, list)));
    } else {
      files.text(file, new ShoppingCsv().render(list));
    }
  }
}
