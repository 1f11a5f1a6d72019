package limberboard.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.BoatQuestions;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.calendar.UpkeepCalendar;
import limberboard.library.file.WorkspaceFolders;
import limberboard.upkeep.Upkeep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code due}: what is due on a boat, or on all of them. */
@Command(
    name = "due",
    mixinStandardHelpOptions = true,
    description = {
      "Says what is due on a boat: overdue, this season, coming, each with the reason.",
      "Without --boat for every boat of the workspace."
    })
final class DueCommand implements Callable<Integer> {
  private static final int USUAL_REMINDER_DAYS = 7;
  private static final int MOST_REMINDER_DAYS = 365;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private DayOption day;
  @Mixin private DueFiles files;

  @Option(names = "--coming", description = "Also list what comes only after this season.")
  private boolean coming;

  @Option(
      names = "--appointments",
      description = {
        "Only what is to be booked with others: whom to call, and by when.",
        "With --json, --csv, --pdf and --ics too."
      })
  private boolean appointments;

  @Option(names = "--json", description = "Print JSON: everything, with limits and reasons.")
  private boolean json;

  @Option(
      names = "--ics",
      paramLabel = "FILE",
      description = "Write a calendar file (RFC 5545) with reminders; needs --boat.")
  private Optional<Path> ics = Optional.empty();

  @Option(
      names = "--remind",
      paramLabel = "DAYS",
      description = "With --ics: how many days before the work to remind; 7 if not given.")
  private int remind = USUAL_REMINDER_DAYS;

  DueCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    CommandContext then = day.in(session);
    List<Fitting> fittings =
        boat.id().isPresent()
            ? then.fitting(read, boat.id()).stream().toList()
            : read.boats().stream().map(each -> new Fitting(each, then.today())).toList();
    if (fittings.isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, "there are no boats yet; write boats/<id>/boat.yaml");
    }
    if (ics.isPresent()) {
      calendar(folders, read, fittings);
    }
    if (files.isAsked()) {
      write(folders, read, fittings);
    }
    if (!json && (ics.isPresent() || files.isAsked())) {
      return ExitCode.OK;
    }
    BoatQuestions doubts = new BoatQuestions(folders, session.today());
    if (json) {
      printJson(read, fittings, doubts);
    } else {
      print(read, fittings, doubts);
    }
    return ExitCode.OK;
  }

  private void write(WorkspaceFolders folders, Workspace read, List<Fitting> fittings) {
    if (files.needsBoat() && boat.id().isEmpty()) {
      throw new Failure(ExitCode.USAGE, "--pdf and --svg need --boat: one sheet is for one boat");
    }
    List<Upkeep> boats =
        fittings.stream().map(fitting -> Upkeep.of(read.library(), fitting)).toList();
    if (appointments) {
      files.writeAppointments(session, folders, boats, coming);
    } else {
      files.write(session, folders, read, boats);
    }
  }

  private void calendar(WorkspaceFolders folders, Workspace read, List<Fitting> fittings) {
    if (boat.id().isEmpty()) {
      throw new Failure(ExitCode.USAGE, "--ics needs --boat: one file is for one boat");
    }
    if (remind < 0 || remind > MOST_REMINDER_DAYS) {
      throw new Failure(ExitCode.USAGE, "--remind is a number of days from 0 to 365");
    }
    Upkeep upkeep = Upkeep.of(read.library(), fittings.get(0));
    UpkeepCalendar calendar = new UpkeepCalendar(remind);
    String text = appointments ? calendar.bookings(upkeep) : calendar.text(upkeep);
    new OutFiles(session, folders, json).text(ics.orElseThrow(), text);
  }

  private void print(Workspace read, List<Fitting> fittings, BoatQuestions doubts) {
    for (int i = 0; i < fittings.size(); i++) {
      if (i > 0) {
        session.out().println();
      }
      Fitting fitting = fittings.get(i);
      Upkeep upkeep = Upkeep.of(read.library(), fitting);
      if (appointments) {
        new AppointmentsText(session.out()).print(upkeep, upkeep.appointments(coming));
      } else {
        new DueText(session.out()).print(upkeep, doubts.of(read, fitting.boat()), coming);
      }
    }
  }

  private void printJson(Workspace read, List<Fitting> fittings, BoatQuestions doubts) {
    List<?> views =
        fittings.stream()
            .map(fitting -> view(Upkeep.of(read.library(), fitting), read, doubts))
            .toList();
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("on", fittings.get(0).on().toString());
    all.put("boats", views);
    new JsonOutput(session.out()).print(boat.id().isPresent() ? views.get(0) : all);
  }

  private Object view(Upkeep upkeep, Workspace read, BoatQuestions doubts) {
    return appointments
        ? AppointmentsView.of(upkeep, upkeep.appointments(coming))
        : DueView.of(upkeep, doubts.of(read, upkeep.fitting().boat()));
  }
}
