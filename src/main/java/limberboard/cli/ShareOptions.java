package limberboard.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.library.value.Own;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.HowFar;
import picocli.CommandLine.Option;

/** What {@code share pull}, {@code push} and {@code copy} have in common. */
final class ShareOptions {
  private static final long QUIET_NANOS = 2_000_000_000L;

  @Option(
      names = "--as",
      paramLabel = "WHOSE",
      description = "Whose copy this is: owner, dealer or yard; remembered in this copy alone.")
  private Optional<String> role = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  /** Whether JSON is asked for. */
  boolean json() {
    return json;
  }

  /** Whose copy it is to be, if that is said. */
  Optional<CopyRole> role() {
    return role.map(
        word -> {
          for (Own own : Own.values()) {
            if (own.word().equals(word)) {
              return new CopyRole(own);
            }
          }
          throw new Failure(ExitCode.USAGE, "--as is owner, dealer or yard, not \"" + word + "\"");
        });
  }

  /** Remembers in a copy whose it is, if that is said. */
  void rememberRole(HistoryFolder place) throws IOException {
    Optional<CopyRole> said = role();
    if (said.isPresent()) {
      said.get().writeTo(place.repository());
    }
  }

  /** An address, which may be a folder as seen from where the command is run. */
  static String address(CommandContext session, String address) {
    boolean isFolder = !address.contains(":") || Files.exists(session.folder().resolve(address));
    return isFolder ? session.folder().resolve(address).normalize().toString() : address;
  }

  /** A connection that asks in the terminal and tells on its error output how far it is. */
  static Connection connection(CommandContext session) {
    return Connection.ofMachine(ShareOptions::ask, stage(session));
  }

  private static Optional<Asking.Answer> ask(String where, boolean again) {
    Console console = System.console();
    if (console == null) {
      return Optional.empty();
    }
    String name =
        console.readLine(
            "%s", (again ? "That was refused. " : "") + "Your name at " + where + ": ");
    if (name == null || name.isBlank()) {
      return Optional.empty();
    }
    char[] secret = console.readPassword("%s", "Password or token (not kept): ");
    return secret == null ? Optional.empty() : Optional.of(new Asking.Answer(name.strip(), secret));
  }

  private static HowFar stage(CommandContext session) {
    return new HowFar() {
      private final long begun = System.nanoTime();
      private long told = begun;

      @Override
      public void step(String what, int done, int total) {
        long now = System.nanoTime();
        if (now - told > QUIET_NANOS) {
          told = now;
          session.err().println(what + (total > 0 ? ": " + done + " of " + total : " …"));
          session.err().flush();
        }
      }
    };
  }

  /** A new folder as seen from where the command is run. */
  static Path folder(CommandContext session, Path asked) {
    return session.folder().resolve(asked).normalize();
  }
}
