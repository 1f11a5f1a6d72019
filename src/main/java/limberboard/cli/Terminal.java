package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import limberboard.library.file.FailureLog;
import limberboard.library.file.LastNet;
import limberboard.library.file.WorkspaceFolders;
import limberboard.words.DayText;
import limberboard.words.Sentences;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** All commands of the terminal. */
public final class Terminal {
  /** What is said when what a command printed did not arrive. */
  static final String NOT_PRINTED =
      "not everything could be printed: the disk is full, or what reads the output has gone away;"
          + " what was to be written into files has been written";

  private final CommandContext session;
  private final Window window;
  private final LastNet net;

  /** The window, which lives beside the terminal, not below it. */
  public interface Window {
    /**
     * Opens the window on a workspace.
     *
     * @return whether there is a display to open it on
     */
    boolean open(WorkspaceFolders folders);

    /**
     * Opens a window that says why there is no workspace, and offers another.
     *
     * @param folder the folder the command was run in
     * @param why what is wrong there
     * @return whether there is a display to open it on
     */
    default boolean openWithout(Path folder, String why) {
      return false;
    }

    /**
     * Makes pictures of the window.
     *
     * @param today the day that counts as today
     * @param order which pictures, and where to
     * @return whether there is a display to make them on
     * @throws IOException when one cannot be written
     */
    default boolean pictures(WorkspaceFolders folders, LocalDate today, PictureOrder order)
        throws IOException {
      return false;
    }
  }

  /**
   * A terminal that opens the window when given no command.
   *
   * @param session the streams it works on
   * @param window the window
   * @param net catches what nobody expected
   */
  public Terminal(CommandContext session, Window window, LastNet net) {
    this.session = session;
    this.window = window;
    this.net = net;
  }

  /** The same without a place for the details of failures. */
  public Terminal(CommandContext session, Window window) {
    this(session, window, new LastNet(FailureLog.nowhere()));
  }

  /**
   * Runs one command.
   *
   * @param words the command line
   * @return the exit code, one of {@link ExitCode}
   */
  public int run(String... words) {
    CommandLine line = new CommandLine(new Top(session, window));
    commands().forEach(line::addSubcommand);
    line.addSubcommand(cases());
    line.addSubcommand(drills());
    line.addSubcommand(courses());
    line.addSubcommand(sharing());
    line.registerConverter(LocalDate.class, this::date);
    line.setOut(session.out());
    line.setErr(session.err());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure, command));
    line.setParameterExceptionHandler((problem, args) -> misunderstood(problem));
    int code = execute(line, words);
    boolean lost = session.out().checkError();
    if (lost && code != ExitCode.IO) {
      session.err().println("limberboard: " + NOT_PRINTED);
      code = ExitCode.IO;
    }
    session.err().flush();
    return code;
  }

  /** Errors such as too little memory come through here, exceptions through {@link #failed}. */
  private int execute(CommandLine line, String... words) {
    try {
      return line.execute(words);
    } catch (RuntimeException | Error e) {
      return unexpected(words.length == 0 ? "limberboard" : words[0], e);
    }
  }

  private int unexpected(String doing, Throwable failure) {
    session.err().println("limberboard: " + net.line(doing, failure));
    return ExitCode.UNEXPECTED;
  }

  private List<Object> commands() {
    return List.of(
        new FindCommand(session),
        new ReadCommand(session),
        new TraceCommand(session),
        new DraftCommand(session),
        new TreeCommand(session),
        new PlanCommand(session),
        new ShoppingCommand(session),
        new RiggingCommand(session),
        new ListCommand(session),
        new BoatsCommand(session),
        new DueCommand(session),
        new YearCommand(session),
        new DoneCommand(session),
        new StartCommand(session),
        new WorkingsCommand(session),
        new StatisticsCommand(session),
        new NextPagesCommand(session),
        new LearningCommand(session),
        new ValidateCommand(session),
        new ProofreadCommand(session),
        new HistoryCommand(session),
        new RestoreCommand(session),
        new ExportCommand(session),
        new ImportCommand(session),
        new SensitivityCommand(session),
        new SearchQualityCommand(session),
        new ReplyCommand(session),
        new LetterQualityCommand(session),
        new TraceQualityCommand(session),
        new DrillQualityCommand(session),
        new ClassCommand(session),
        new NewCommand(session),
        new RenameCommand(session),
        new DeleteCommand(session),
        new PicturesCommand(session, window));
  }

  private CommandLine cases() {
    return new CommandLine(new CaseCommand())
        .addSubcommand(new CaseNewCommand(session))
        .addSubcommand(new CaseCloseCommand(session))
        .addSubcommand(new CaseListCommand(session))
        .addSubcommand(new CaseInventCommand(session));
  }

  private CommandLine drills() {
    return new CommandLine(new DrillCommand())
        .addSubcommand(new DrillNewCommand(session))
        .addSubcommand(new DrillRunCommand(session))
        .addSubcommand(new DrillMarkCommand(session))
        .addSubcommand(new DrillPaperCommand(session));
  }

  private CommandLine sharing() {
    return new CommandLine(new ShareCommand())
        .addSubcommand(new SharePullCommand(session))
        .addSubcommand(new SharePushCommand(session))
        .addSubcommand(new ShareCopyCommand(session));
  }

  private CommandLine courses() {
    return new CommandLine(new CourseCommand())
        .addSubcommand(new CourseNewCommand(session))
        .addSubcommand(new CourseListCommand(session))
        .addSubcommand(new CoursePaperCommand(session))
        .addSubcommand(new CourseLineCommand(session));
  }

  private int failed(Exception failure, CommandLine command) {
    if (failure instanceof Failure known) {
      session.err().println("limberboard: " + known.getMessage());
      return known.exitCode();
    }
    if (failure instanceof IOException) {
      session.err().println("limberboard: " + net.line(command.getCommandName(), failure));
      return ExitCode.IO;
    }
    return unexpected(command.getCommandName(), failure);
  }

  /** Reads a day; where day and month could be either, it is told back beside the answer. */
  private LocalDate date(String text) {
    DayText.Read read = new DayText(session.today()).read(text);
    if (read instanceof DayText.Found found && found.couldBeOther()) {
      session.err().println(text.strip() + " is read as " + DayText.written(found.on()));
    }
    return read.day()
        .orElseThrow(
            () ->
                new CommandLine.TypeConversionException(
                    "\"" + text + "\" is no date. " + read.why()));
  }

  private int misunderstood(CommandLine.ParameterException problem) {
    session.err().println("limberboard: " + problem.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(problem, session.err());
    session.err().println("Try: limberboard " + nameOf(problem.getCommandLine()) + "--help");
    return ExitCode.USAGE;
  }

  private static String nameOf(CommandLine line) {
    return line.getParent() == null ? "" : line.getCommandName() + " ";
  }

  /** Without a command: the window, or where there is no display a trace in the terminal. */
  @Command(
      name = "limberboard",
      mixinStandardHelpOptions = true,
      version = "Limberboard 0.1.0",
      description = {
        "Leads from what an owner notices on a boat to the cause, the mend and the materials.",
        "Without a command it opens the window; where there is no display it traces here."
      },
      footer = {
        "",
        "Examples:",
        "  limberboard find \"wet berth cushions\" --boat dunlin",
        "  limberboard trace water-in-forward-cabin --boat dunlin",
        "  limberboard read rebed-deck-fitting --boat whimbrel --pdf rebed.pdf",
        "  limberboard validate"
      })
  static final class Top implements Callable<Integer> {
    private final CommandContext session;
    private final Window window;
    @Mixin private WorkspaceOption workspace;

    Top(CommandContext session, Window window) {
      this.session = session;
      this.window = window;
    }

    @Override
    public Integer call() throws Exception {
      WorkspaceFolders folders;
      try {
        folders = session.folders(workspace.folder());
      } catch (Failure failure) {
        if (failure.exitCode() == ExitCode.NO_WORKSPACE
            && window.openWithout(
                session.folder(), Sentences.capital(failure.getMessage()) + ".")) {
          return ExitCode.OK;
        }
        throw failure;
      }
      if (window.open(folders)) {
        return ExitCode.OK;
      }
      session
          .out()
          .println("There is no display here, so the window cannot open. Tracing in the terminal.");
      return new Welcome(session, session.workspace(folders)).run();
    }
  }
}
