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
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.HourMeter;
import limberboard.boat.LogCount;
import limberboard.boat.LogDay;
import limberboard.boat.LogEntry;
import limberboard.boat.LogHours;
import limberboard.boat.LogNote;
import limberboard.boat.LogWriter;
import limberboard.boat.Typed;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.LogEvents;
import limberboard.upkeep.Due;
import limberboard.upkeep.InRound;
import limberboard.upkeep.Upkeep;
import limberboard.words.DayText;
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
  private final CommandContext session;
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
  private Optional<String> hours = Optional.empty();

  @Option(
      names = "--count",
      paramLabel = "USE=N",
      description = "Uses counted since the line before, such as hoists=20. May be repeated.")
  private Map<String, String> counts = new LinkedHashMap<>();

  @Option(names = "--note", paramLabel = "TEXT", description = "Anything to remember.")
  private String note = "";

  @Option(names = "--again", description = "The work was not done anew but looked at again.")
  private boolean again;

  @Option(
      names = "--alone",
      description = "Of a round: write nothing of the work that was due with it.")
  private boolean alone;

  @Option(names = "--undo", description = "Take the last entry of this work out again.")
  private boolean undo;

  @Option(
      names = "--json",
      description = "Print JSON: what was written or taken out, and what is next.")
  private boolean json;

  DoneCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.foldersToWrite(workspace.folder());
    Workspace read = session.workspace(folders);
    Boat found = session.fitting(read, Optional.of(boat)).orElseThrow().boat();
    if (!found.isEntered()) {
      throw new Failure(
          ExitCode.NOT_FOUND, found.name() + " has no log: nobody has entered that boat yet");
    }
    check(read);
    LogWriter book = new LogWriter(folders);
    LogEntry entry = undo ? last(found) : entry();
    List<LogEntry> with = undo ? List.of() : withRound(read, found, entry);
    List<LogEntry> all = Stream.concat(Stream.of(entry), with.stream()).toList();
    refuse(undo ? book.remove(found.id(), entry) : book.add(found.id(), all));
    Afterwards after = afterwards(folders, found, entry);
    if (json) {
      new JsonOutput(session.out())
          .print(DoneView.of(found, entry, with, undo, after.next(), after.questions()));
    } else {
      print(entry, after.next());
      with.forEach(
          each ->
              session.out().println("With it: " + DayText.written(each.date()) + " " + said(each)));
      after.questions().forEach(question -> session.out().println("Please look: " + question));
    }
    return ExitCode.OK;
  }

  /** What was due with a round on the day it was done: done with it, unless --alone. */
  private List<LogEntry> withRound(Workspace read, Boat found, LogEntry entry) {
    if (alone || again) {
      return List.of();
    }
    return Upkeep.of(read.library(), new Fitting(found, entry.date())).all().stream()
        .filter(due -> due.round().map(InRound::round).filter(work::equals).isPresent())
        .map(due -> entry.of(due.work().id()))
        .toList();
  }

  /** What is to be said once the log has been changed. */
  private record Afterwards(List<Due> next, List<String> questions) {}

  /**
   * Works out what is due next. The log has been changed by now, so that whatever goes wrong here
   * is said as a question and never taken for a failure to write.
   */
  private Afterwards afterwards(WorkspaceFolders folders, Boat found, LogEntry entry) {
    try {
      Workspace after = session.workspace(folders);
      return new Afterwards(
          next(after, found.id()), undo ? List.of() : questions(after, found, entry));
    } catch (RuntimeException | StackOverflowError e) {
      return new Afterwards(
          List.of(),
          List.of(
              "the log is "
                  + (undo ? "changed" : "written")
                  + ", but when the work is due next could not be worked out; validate says what is"
                  + " wrong"));
    }
  }

  private void check(Workspace read) {
    if (LogEvents.ALL.contains(work) && !work.equals(LogEvents.LOOKED_AGAIN) && !again) {
      return;
    }
    if (read.library().procedure(work).isEmpty()) {
      List<String> ids = read.library().all(Procedure.class).stream().map(Page::id).toList();
      throw Failure.unknown("procedure", work, ids, "try find, or one of the events");
    }
  }

  private LogEntry entry() {
    LocalDate on = day.orElse(session.today());
    if (on.isAfter(session.today())) {
      throw new Failure(
          ExitCode.USAGE,
          on + " lies in the future (today is " + session.today() + "); log work once it is done");
    }
    Map<String, Integer> counted = new LinkedHashMap<>();
    counts.forEach(
        (use, count) ->
            counted.put(
                value("", LogCount.name(use)), value("--count " + use, LogCount.read(count))));
    return new LogEntry(
        value("--on", LogDay.check(on)),
        again ? LogEvents.LOOKED_AGAIN : work,
        hours
            .map(text -> OptionalDouble.of(value("--hours", LogHours.typed(text))))
            .orElseGet(OptionalDouble::empty),
        counted,
        value("--note", LogNote.read(note)),
        again ? Optional.of(work) : Optional.empty(),
        0);
  }

  /**
   * What an option says; it is refused before anything is written when the log could not hold it.
   */
  private static <T> T value(String option, Typed<T> typed) {
    typed
        .bad()
        .ifPresent(
            bad -> {
              String name = option.isEmpty() ? "" : option + ": ";
              throw new Failure(ExitCode.USAGE, name + bad.wrong() + "; " + bad.right());
            });
    return typed.good().orElseThrow();
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

  private static void refuse(LogWriter.Outcome outcome) {
    if (outcome instanceof LogWriter.Refused refused) {
      throw new Failure(ExitCode.IO, refused.problem().toString());
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
        .filter(due -> due.which().procedure().equals(work))
        .toList();
  }

  private void print(LogEntry entry, List<Due> next) {
    String did = undo ? "Taken out of the log: " : "Written into the log: ";
    session.out().println(did + DayText.written(entry.date()) + " " + said(entry));
    for (Due due : next) {
      String day = due.lastDay().map(on -> " by " + DayText.written(on)).orElse("");
      session
          .out()
          .println("Next: " + due.title() + day + " (" + due.why().said(DayText::written) + ")");
    }
  }
}
