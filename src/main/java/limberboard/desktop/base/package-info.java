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
 * <p><b>Choices made.</b> Nothing here is a Swing component, so models built on it are tested
 * without a display. Executors are made in one place ({@code DesktopStart}) and handed in; tests
 * hand in ones that they drive step by step.
 *
 * <p><b>Threads.</b> Sessions, notices and activities belong to the event thread. Work given to a
 * background runs elsewhere and must touch none of them.
 */
package limberboard.desktop.base;
