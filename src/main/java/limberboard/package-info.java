/**
 * Starts the program and wires the window and the terminal, which do not know each other.
 *
 * <p>To follow it:
 *
 * <ol>
 *   <li>{@link limberboard.Limberboard} takes the words of the command line and the standard
 *       streams;
 *   <li>it runs a {@link limberboard.cli.Terminal}, which without a command asks {@code Display}
 *       for the window;
 *   <li>{@code Display} opens {@link limberboard.desktop.DesktopApp} where there is a display.
 * </ol>
 *
 * <pre>{@code
 * var program =
 *     new ProcessBuilder(
 *             System.getProperty("java.home") + "/bin/java",
 *             "-cp",
 *             System.getProperty("java.class.path"),
 *             "limberboard.Limberboard",
 *             "--version")
 *         .start();
 * String said = new String(program.getInputStream().readAllBytes());
 * assert program.waitFor() == 0 && said.startsWith("Limberboard ") : said;
 * }</pre>
 *
 * <p><b>Choices made.</b> Only here are the process's own streams and its exit touched. What
 * libraries print goes into the file of failures ({@link limberboard.library.file.FailureLog}),
 * what nobody expected through the {@link limberboard.library.file.LastNet}; words that lost
 * letters on their way from the terminal are refused before anything is done.
 *
 * <p><b>Threads.</b> The main thread, until the window is open.
 */
package limberboard;
