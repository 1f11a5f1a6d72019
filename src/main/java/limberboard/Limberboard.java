package limberboard;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.cli.Session;
import limberboard.cli.Terminal;

/** Starts the program: the window without words, a terminal command with them. */
public final class Limberboard {
  private Limberboard() {}

  /**
   * Starts the program.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    Session session =
        new Session(
            new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)),
            new PrintWriter(System.out, false, StandardCharsets.UTF_8),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            Path.of("").toAbsolutePath(),
            installed(),
            LocalDate.now());
    Display display = new Display();
    int code = new Terminal(session, display).run(args);
    if (!display.opened()) {
      System.exit(code);
    }
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
