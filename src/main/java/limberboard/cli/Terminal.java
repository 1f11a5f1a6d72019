package limberboard.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** All commands of the terminal. */
public final class Terminal {
  private final Session session;

  /** A terminal that works on these streams. */
  public Terminal(Session session) {
    this.session = session;
  }

  /**
   * Runs one command.
   *
   * @param words the command line
   * @return the exit code, one of {@link ExitCode}
   */
  public int run(String... words) {
    CommandLine line = new CommandLine(new Top());
    line.addSubcommand(new ValidateCommand(session));
    line.setOut(session.out());
    line.setErr(session.err());
    line.getSubcommands().values().forEach(this::streams);
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> {
          if (failure instanceof Failure known) {
            session.err().println("limberboard: " + known.getMessage());
            return known.exitCode();
          }
          throw failure;
        });
    line.setParameterExceptionHandler(
        (problem, args) -> {
          session.err().println("limberboard: " + problem.getMessage());
          session.err().println("Try --help.");
          return ExitCode.USAGE;
        });
    int code = line.execute(words);
    session.out().flush();
    session.err().flush();
    return code;
  }

  private void streams(CommandLine command) {
    command.setOut(session.out());
    command.setErr(session.err());
  }

  @Command(
      name = "limberboard",
      mixinStandardHelpOptions = true,
      description = "Traces faults on a boat, finds and reads pages, and checks the library.")
  static final class Top implements Runnable {
    @Override
    public void run() {
      CommandLine.usage(this, System.out);
    }
  }
}
