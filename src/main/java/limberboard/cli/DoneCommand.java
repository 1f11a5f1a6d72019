package limberboard.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.HourMeter;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWords;
import limberboard.boat.LogWriter;
import limberboard.boat.Workspace;
import limberboard.library.Nearest;
import limberboard.library.Page;
import limberboard.library.Problem;
import limberboard.library.Procedure;
import limberboard.library.WorkspaceFolders;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code done}: writes work that was done into a boat's log, or takes it out again. */
@Command(
    name = "done",
    mixinStandardHelpOptions = true,
    description = {
      "Writes into a boat's log that work was done, and says when it is due next.",
      "WORK is a procedure's id, or an event: launched, hauled-out, mast-up, mast-down, reading,"
          + " new-meter. --undo takes the last such entry out again."
    })
final class DoneCommand implements Callable<Integer> {
  private final Session session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "WORK", description = "The procedure's id, or an event.")
  private String work;

  @Option(names = "--boat", paramLabel = "BOAT", required = true, description = "The boat.")
  private String boat;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description =
          "The day it was done, such as 15.3.2026, \"15 Mar 2026\" or 2026-03-15; today if not"
              + " given.")
  private Optional<LocalDate> day = Optional.empty();

  @Option(names = "--hours", paramLabel = "N", description = "The hour meter's reading that day.")
  private Optional<Double> hours = Optional.empty();

  @Option(
      names = "--count",
      paramLabel = "USE=N",
      description = "Uses counted since the line before, such as hoists=20. May be repeated.")
  private Map<String, Integer> counts = new LinkedHashMap<>();

  @Option(names = "--note", paramLabel = "TEXT", description = "Anything to remember.")
  private String note = "";

  @Option(names = "--again", description = "The work was not done anew but looked at again.")
  private boolean again;

  @Option(names = "--undo", description = "Take the last entry of this work out again.")
  private boolean undo;

  @Option(
      names = "--json",
      description = "Print JSON: what was written or taken out, and what is next.")
  private boolean json;

  DoneCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Boat found = session.fitting(read, Optional.of(boat)).orElseThrow().boat();
    if (!found.isEntered()) {
      throw new Failure(
          ExitCode.NOT_FOUND, found.name() + " has no log: nobody has entered that boat yet");
    }
    check(read);
    LogWriter writer = new LogWriter(folders);
    LogEntry entry = undo ? last(found) : entry();
    refuse(undo ? writer.remove(found.id(), entry) : writer.add(found.id(), entry));
    Workspace after = session.workspace(folders);
    List<Due> next = next(after, found.id());
    List<String> questions = undo ? List.of() : questions(after, found, entry);
    if (json) {
      new JsonOutput(session.out()).print(DoneView.of(found, entry, undo, next, questions));
    } else {
      print(entry, next);
      questions.forEach(question -> session.out().println("Please look: " + question));
    }
    return ExitCode.OK;
  }

  private void check(Workspace read) {
    if (LogWords.EVENTS.contains(work) && !work.equals(LogWords.LOOKED_AGAIN) && !again) {
      return;
    }
    if (read.library().procedure(work).isEmpty()) {
      List<String> ids = read.library().all(Procedure.class).stream().map(Page::id).toList();
      throw new Failure(
          ExitCode.NOT_FOUND,
          "there is no procedure \""
              + work
              + "\"; "
              + Nearest.advice(work, ids, "try find, or one of the events"));
    }
  }

  private LogEntry entry() {
    LocalDate on = day.orElse(session.today());
    if (on.isAfter(session.today())) {
      throw new Failure(
          ExitCode.USAGE,
          on + " lies in the future (today is " + session.today() + "); log work once it is done");
    }
    counts.keySet().stream()
        .filter(use -> !LogWriter.mayBeCounted(use))
        .findFirst()
        .ifPresent(
            use -> {
              throw new Failure(
                  ExitCode.USAGE,
                  "\""
                      + use
                      + "\" cannot be counted; a use is a word of small letters and hyphens, such"
                      + " as hoists or nights");
            });
    if (hours.filter(reading -> !(reading >= 0 && reading < 1e6)).isPresent()
        || counts.values().stream().anyMatch(count -> count < 0)) {
      throw new Failure(ExitCode.USAGE, "hours and counts are numbers from 0 on");
    }
    return new LogEntry(
        on,
        again ? LogWords.LOOKED_AGAIN : work,
        hours.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
        counts,
        note,
        again ? Optional.of(work) : Optional.empty(),
        0);
  }

  private LogEntry last(Boat found) {
    return found.log().stream()
        .filter(
            entry ->
                again
                    ? entry.of().filter(work::equals).isPresent()
                    : entry.work().equals(work) && entry.of().isEmpty())
        .filter(entry -> day.isEmpty() || entry.date().equals(day.get()))
        .max(Comparator.comparing(LogEntry::date).thenComparing(LogEntry::line))
        .orElseThrow(
            () ->
                new Failure(
                    ExitCode.NOT_FOUND,
                    "the log of "
                        + found.name()
                        + " has no such entry"
                        + day.map(on -> " on " + on).orElse("")
                        + "; nothing was changed"));
  }

  private static void refuse(Optional<Problem> problem) {
    if (problem.isPresent()) {
      throw new Failure(ExitCode.IO, problem.get().toString());
    }
  }

  private static String said(LogEntry entry) {
    return entry.work() + entry.of().map(of -> " of " + of).orElse("");
  }

  /** What is doubtful about an entry that was written all the same. */
  private List<String> questions(Workspace after, Boat found, LogEntry entry) {
    List<String> questions = new ArrayList<>();
    Boat now = after.boat(found.id()).orElseThrow();
    boolean doubted =
        HourMeter.of(now.log()).doubted().stream()
            .anyMatch(each -> each.date().equals(entry.date()) && each.work().equals(entry.work()));
    if (doubted) {
      questions.add(
          "the hours do not go with the readings before and after them and are not counted;"
              + " --undo, or write new-meter where the meter was replaced");
    }
    if (entry.date().isBefore(now.ageFrom())) {
      questions.add("she was new only on " + now.ageFrom() + "; --undo if the year is wrong");
    }
    after
        .library()
        .procedure(work)
        .map(page -> new Fitting(now, entry.date()).judge(page.head().fits()))
        .filter(fit -> !fit.fits())
        .ifPresent(fit -> questions.add("this work is not for her: " + fit.reason()));
    return questions;
  }

  /** When the work, and the look again after it, are due now. */
  private List<Due> next(Workspace read, String id) {
    Boat now = read.boat(id).orElseThrow();
    return Upkeep.of(read.library(), new Fitting(now, session.today())).all().stream()
        .filter(due -> due.id().equals(work) || due.id().equals(work + Due.AGAIN))
        .toList();
  }

  private void print(LogEntry entry, List<Due> next) {
    String did = undo ? "Taken out of the log: " : "Written into the log: ";
    session.out().println(did + entry.date() + " " + said(entry));
    for (Due due : next) {
      String day = due.runsOut().map(on -> " by " + on).orElse("");
      session.out().println("Next: " + due.title() + day + " (" + due.why() + ")");
    }
  }
}
