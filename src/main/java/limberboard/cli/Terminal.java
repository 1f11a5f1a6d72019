package limberboard.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import limberboard.library.DayText;
import limberboard.library.WorkspaceFolders;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** All commands of the terminal. */
public final class Terminal {
  private final Session session;
  private final Window window;

  /** The window, which lives beside the terminal, not below it. */
  public interface Window {
    /**
     * Opens the window on a workspace.
     *
     * @return whether there is a display to open it on
     */
    boolean open(WorkspaceFolders folders);

    /**
     * Makes pictures of the window.
     *
     * @param today the day that counts as today
     * @param order which pictures, and where to
     * @return whether there is a display to make them on
     * @throws IOException when one cannot be written
     */
    boolean pictures(WorkspaceFolders folders, LocalDate today, PictureOrder order)
        throws IOException;
  }

  /** A terminal that works on these streams, and opens the window when given no command. */
  public Terminal(Session session, Window window) {
    this.session = session;
    this.window = window;
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
    line.registerConverter(LocalDate.class, this::date);
    line.setOut(session.out());
    line.setErr(session.err());
    line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
    line.setParameterExceptionHandler((problem, args) -> misunderstood(problem));
    int code = line.execute(words);
    session.out().flush();
    session.err().flush();
    return code;
  }

  private List<Object> commands() {
    return List.of(
        new FindCommand(session),
        new ReadCommand(session),
        new TraceCommand(session),
        new TreeCommand(session),
        new ShoppingCommand(session),
        new RiggingCommand(session),
        new ListCommand(session),
        new BoatsCommand(session),
        new DueCommand(session),
        new DoneCommand(session),
        new WorkingsCommand(session),
        new ValidateCommand(session),
        new SensitivityCommand(session),
        new SearchQualityCommand(session),
        new TraceQualityCommand(session),
        new PicturesCommand(session, window));
  }

  private int failed(Exception failure) throws Exception {
    if (failure instanceof Failure known) {
      session.err().println("limberboard: " + known.getMessage());
      return known.exitCode();
    }
    if (failure instanceof IOException) {
      session.err().println("limberboard: cannot read or write: " + failure.getMessage());
      return ExitCode.IO;
    }
    throw failure;
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
    private final Session session;
    private final Window window;
    @Mixin private WorkspaceOption workspace;

    Top(Session session, Window window) {
      this.session = session;
      this.window = window;
    }

    @Override
    public Integer call() throws Exception {
      WorkspaceFolders folders = session.folders(workspace.folder());
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
