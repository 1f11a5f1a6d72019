package limberboard;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.cli.CommandContext;
import limberboard.cli.ExitCode;
import limberboard.cli.Terminal;
import limberboard.library.file.FailureLog;
import limberboard.library.file.LastNet;
import limberboard.library.file.UserFolders;

/** Starts the program: the window without words, a terminal command with them. */
public final class Limberboard {
  private Limberboard() {}

  /**
   * Starts the program.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    PrintWriter err = writer(FileDescriptor.err, true);
    FailureLog log = FailureLog.in(UserFolders.here().state(), Clock.systemUTC());
    LastNet net = new LastNet(log);
    Noise.keepIn(log);
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, failure) -> err.println("limberboard: " + net.line(thread.getName(), failure)));
    try {
      start(args, err, net);
    } catch (RuntimeException | Error e) {
      err.println("limberboard: " + net.line("Starting", e));
      System.exit(ExitCode.UNEXPECTED);
    }
  }

  private static void start(String[] args, PrintWriter err, LastNet net) {
    Optional<String> unreadable = new Spelling().wrong(args);
    if (unreadable.isPresent()) {
      err.println("limberboard: " + unreadable.get());
      System.exit(ExitCode.USAGE);
    }
    CommandContext session =
        new CommandContext(
            new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)),
            writer(FileDescriptor.out, false),
            err,
            Path.of("").toAbsolutePath(),
            installed(),
            LocalDate.now());
    Display display = new Display(net);
    int code = new Terminal(session, display, net).run(args);
    if (!display.opened()) {
      System.exit(code);
    }
  }

  private static PrintWriter writer(FileDescriptor to, boolean atOnce) {
    return new PrintWriter(new FileOutputStream(to), atOnce, StandardCharsets.UTF_8);
  }

  /** The folder the program lies in, so that its own workspace is found from anywhere. */
  private static Optional<Path> installed() {
    try {
      return Optional.of(
          Path.of(Limberboard.class.getProtectionDomain().getCodeSource().getLocation().toURI()));
    } catch (URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
