package limberboard.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.boat.Fitting;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWriter;
import limberboard.boat.Typed;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.AnswerText;
import limberboard.upkeep.start.Start;
import limberboard.upkeep.start.StartAnswer;
import limberboard.upkeep.start.StartQuestion;
import limberboard.words.DayText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code start}: begins the log of a bought boat with what is known. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description = {
      "Begins the log of a boat that you bought: asks, by round and by kind of work, what is known"
          + " of when it was last done, writes that into her log with how it is known, and says"
          + " what is not known, most dangerous first.",
      "Asks on the terminal unless it is told with --survey, --answer or --answers. --json prints"
          + " the questions, or with answers what was written.",
      "An answer is such as \"said 2023\", \"bill May 2024\", \"survey 2026-09-12\", \"seen"
          + " 3.10.2026\", \"not known\" or \"not aboard\"."
    })
final class StartCommand implements Callable<Integer> {
  private static final String INPUT = "-";

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--boat", paramLabel = "BOAT", required = true, description = "The boat.")
  private String boat;

  @Option(
      names = "--bought",
      paramLabel = "DATE",
      description = "The day on which you bought her; written into her boat.yaml.")
  private Optional<LocalDate> bought = Optional.empty();

  @Option(
      names = "--survey",
      paramLabel = "DATE",
      description =
          "There was a survey on this day: counts for what a surveyor looks at ashore as a rule."
              + " Look whether the report says so of each; --answer says otherwise.")
  private Optional<LocalDate> survey = Optional.empty();

  @Option(
      names = "--answer",
      paramLabel = "WHAT=ANSWER",
      description =
          "What is known of a question or of the work of one page, such as safety-day=\"said"
              + " 2026\". May be repeated.")
  private Map<String, String> told = new LinkedHashMap<>();

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description =
          "Reads such answers from a file, one a line; - reads them as they are typed in.")
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--undo",
      description = "Take out of her log again all that says how it is known.")
  private boolean undo;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  StartCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    boolean writes = undo || bought.isPresent() || !json || isTold();
    WorkspaceFolders folders =
        writes ? session.foldersToWrite(workspace.folder()) : session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Boat found = session.fitting(read, Optional.of(boat)).orElseThrow().boat();
    if (!found.isEntered()) {
      throw new Failure(
          ExitCode.NOT_FOUND, found.name() + " has no log: nobody has entered that boat yet");
    }
    if (undo) {
      return undo(folders, found);
    }
    Boat mine = bought(folders, read, found);
    Start start = new Start(Upkeep.of(read.library(), new Fitting(mine, session.today())));
    if (json && !isTold()) {
      new JsonOutput(session.out()).print(StartView.of(start, Optional.empty()));
      return ExitCode.OK;
    }
    StartText text = new StartText(session.out(), start);
    Optional<Map<String, StartAnswer>> answers =
        isTold() ? Optional.of(told(start)) : new StartInterview(session, start, text).ask();
    if (answers.isEmpty()) {
      session.out().println("Nothing was written.");
      return ExitCode.OK;
    }
    List<LogEntry> lines = start.entries(answers.get());
    if (!lines.isEmpty()) {
      refuse(new LogWriter(folders).add(mine.id(), lines));
    }
    end(folders, mine, answers.get(), lines, text);
    return ExitCode.OK;
  }

  private boolean isTold() {
    return survey.isPresent() || !told.isEmpty() || file.isPresent();
  }

  private int undo(WorkspaceFolders folders, Boat found) {
    List<LogEntry> known = found.log().stream().filter(entry -> entry.known().isPresent()).toList();
    if (known.isEmpty()) {
      throw new Failure(
          ExitCode.NOT_FOUND,
          "nothing in the log of " + found.name() + " says how it is known; nothing was changed");
    }
    refuse(new LogWriter(folders).remove(found.id(), known));
    if (json) {
      new JsonOutput(session.out()).print(StartView.Line.all(known));
    } else {
      session.out().println("Taken out of the log: " + known.size() + " lines");
    }
    return ExitCode.OK;
  }

  /** The boat with the day on which she was bought, written into her file where it is new. */
  private Boat bought(WorkspaceFolders folders, Workspace read, Boat found) {
    if (bought.isEmpty() && found.bought().isEmpty()) {
      throw new Failure(
          ExitCode.USAGE,
          found.name()
              + " is not said to have been bought; add --bought DATE, the day on which you bought"
              + " her, or write bought: 2026-10-03 into "
              + file(folders, found)
              + ". Of a boat new from the yard all is known from the day she was new");
    }
    LocalDate day = bought.or(found::bought).orElseThrow();
    if (day.isAfter(session.today()) || day.getYear() < found.built()) {
      throw new Failure(
          ExitCode.USAGE,
          "bought on "
              + DayText.written(day)
              + ": that lies "
              + (day.isAfter(session.today()) ? "in the future" : "before she was built")
              + "; write a day from "
              + found.built()
              + " to "
              + DayText.written(session.today()));
    }
    Boat mine = found.bought(day);
    if (!mine.equals(found)
        && !(new BoatWriter(folders).save(read.library(), found, mine)
            instanceof BoatWriter.Saved)) {
      throw new Failure(
          ExitCode.IO,
          "the day could not be written into "
              + file(folders, found)
              + "; write bought: "
              + day
              + " by hand");
    }
    return mine;
  }

  private static String file(WorkspaceFolders folders, Boat boat) {
    return folders.relative(folders.boats().resolve(boat.id()).resolve("boat.yaml"));
  }

  private Map<String, StartAnswer> told(Start start) throws IOException {
    Map<String, StartAnswer> answers = new LinkedHashMap<>();
    survey.ifPresent(day -> answers.putAll(surveyed(start, day)));
    Map<String, String> all = new LinkedHashMap<>();
    for (String line : lines()) {
      String[] parts = line.split("=", 2);
      if (parts.length < 2) {
        throw new Failure(
            ExitCode.USAGE, "\"" + line + "\" is no answer; write such as safety-day=said 2026");
      }
      all.put(parts[0].strip(), parts[1]);
    }
    all.putAll(told);
    all.forEach((what, answer) -> answers.put(asked(start, what), read(start, what, answer)));
    return answers;
  }

  private Map<String, StartAnswer> surveyed(Start start, LocalDate day) {
    Typed<StartAnswer> read = reader(start).read("survey " + day);
    read.bad().ifPresent(bad -> refuse("--survey", bad));
    return start.surveyed(day);
  }

  private AnswerText reader(Start start) {
    return new AnswerText(start.upkeep().fitting().boat(), session.today());
  }

  private static void refuse(String what, Typed.Bad<?> bad) {
    throw new Failure(ExitCode.USAGE, what + ": " + bad.wrong() + "; " + bad.right());
  }

  private StartAnswer read(Start start, String what, String answer) {
    Typed<StartAnswer> read = reader(start).read(answer);
    read.bad().ifPresent(bad -> refuse(what, bad));
    return read.good().orElseThrow();
  }

  private static String asked(Start start, String what) {
    List<String> known = new ArrayList<>();
    for (StartQuestion question : start.questions()) {
      known.add(question.id());
      question.works().forEach(due -> known.add(due.work().id()));
    }
    if (!known.contains(what)) {
      throw Failure.unknown("open question", what, known, "--json prints the questions");
    }
    return what;
  }

  private List<String> lines() throws IOException {
    if (file.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    if (file.get().equals(INPUT)) {
      BufferedReader in = session.in();
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        lines.add(line);
      }
    } else {
      Path path = session.folder().resolve(file.get());
      if (!Files.isRegularFile(path)) {
        throw new Failure(ExitCode.NOT_FOUND, "there is no file " + file.get());
      }
      lines.addAll(Files.readAllLines(path));
    }
    return lines.stream()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }

  private static void refuse(LogWriter.Outcome outcome) {
    if (outcome instanceof LogWriter.Refused refused) {
      throw new Failure(ExitCode.IO, refused.problem().toString());
    }
  }

  /** Says what was written and, from the log as it is now, what is not known. */
  private void end(
      WorkspaceFolders folders,
      Boat mine,
      Map<String, StartAnswer> answers,
      List<LogEntry> lines,
      StartText text) {
    Workspace now = session.workspace(folders);
    Boat written = now.boat(mine.id()).orElseThrow();
    Start after = new Start(Upkeep.of(now.library(), new Fitting(written, session.today())));
    if (json) {
      new JsonOutput(session.out()).print(StartView.of(after, Optional.of(lines)));
    } else {
      text.written(lines, now.library());
      text.notAboard(answers);
      new StartText(session.out(), after).left();
    }
  }
}
