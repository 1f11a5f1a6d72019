/**
 * The terminal: one command a job, for people and for scripts.
 *
 * <p>To use it: make a {@link limberboard.cli.Terminal}, and {@link
 * limberboard.cli.Terminal#run(String[]) run} the words of a command line; the result is the exit
 * code ({@link limberboard.cli.ExitCode}).
 *
 * <pre>{@code
 * import java.io.*;
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.Optional;
 * import limberboard.cli.*;
 *
 * var typed = new BufferedReader(new StringReader(""));
 * var said = new StringWriter();
 * var out = new PrintWriter(said);
 * Path here = Path.of("").toAbsolutePath();
 * LocalDate today = LocalDate.of(2026, 3, 15);
 * var context = new CommandContext(typed, out, out, here, Optional.empty(), today);
 * var terminal = new Terminal(context, folders -> false); // no window here
 * assert terminal.run("boats", "--json") == ExitCode.OK : said;
 * assert said.toString().contains("dunlin");
 * }</pre>
 *
 * <p><b>Choices made.</b> Every command reads the workspace afresh, prints to the streams it was
 * given and returns an exit code; nothing here exits the process. With {@code --json} the output is
 * one JSON value whose keys are described in {@code docs/terminal.md} and stay as they are. {@code
 * find -} and {@code trace -} answer one request a line, so that a script pays for starting once.
 *
 * <p><b>Threads.</b> A command runs on the thread that calls it.
 */
package limberboard.cli;
