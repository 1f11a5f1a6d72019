/**
 * The window: starting it, and putting it together.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>call {@link limberboard.desktop.DesktopApp#open} with a workspace;
 *   <li>to see how it is started, read {@code DesktopStart} from top to bottom;
 *   <li>to see how it is put together, read {@code WindowAssembly}.
 * </ol>
 *
 * <p>Below this package: {@code look} (themes), {@code parts} (small components), {@code base}
 * (what places share), {@code drawing} (the boat with its zones), {@code read} (pages on screen),
 * {@code find} (the search field), {@code window} (the frame), and one package a place: {@code
 * trace}, {@code pages}, {@code upkeep}, {@code boats}.
 *
 * <p><b>Choices made.</b> Each place has a model without Swing, tested without a display, and
 * panels with one short method a region. Everything outside the window (files, index, clock,
 * executors) comes in through {@code WindowServices}, so tests and pictures put in their own. See
 * {@code docs/decisions/0005-window.md}.
 *
 * <p><b>Threads.</b> The window belongs to the event thread. Reading, searching, rendering and
 * writing run on the executors that {@code Workers} makes, and nowhere else.
 */
package limberboard.desktop;
