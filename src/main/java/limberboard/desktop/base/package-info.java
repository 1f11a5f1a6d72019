/**
 * What all places of the window share: the session, slow work, notices, memory for settings.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>take a {@link limberboard.desktop.base.Session} in the constructor and listen to it;
 *   <li>give slow work to a {@link limberboard.desktop.base.Background}, which comes back on the
 *       event thread and shows failures;
 *   <li>keep what should be there next time in a {@link limberboard.desktop.base.Memory}.
 * </ol>
 *
 * <pre>{@code
 * import java.io.IOException;
 * import java.util.Optional;
 * import limberboard.desktop.base.*;
 *
 * var notices = new Notices();
 * var memory = new Memory(new Forgetful());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), notices);
 * background.run("Measuring", () -> 6 * 7, length -> memory.remember("length", "" + length));
 * assert memory.text("length").equals(Optional.of("42"));
 * background.run(
 *     "Failing",
 *     () -> {
 *       throw new IOException("no room");
 *     },
 *     length -> {});
 * assert notices.current().isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> Nothing here is a Swing component, so models built on it are tested
 * without a display. Executors are made in one place ({@code DesktopStart}) and handed in; tests
 * hand in ones that they drive step by step.
 *
 * <p><b>Threads.</b> Sessions, notices and activities belong to the event thread. Work given to a
 * background runs elsewhere and must touch none of them.
 */
package limberboard.desktop.base;
