/**
 * The place where a fault is traced: from the drawing of the boat to the mend.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.trace.TraceModel}, which holds everything and knows no
 *       Swing;
 *   <li>make a {@link limberboard.desktop.trace.TracePlace} on it and give it to the window;
 *   <li>start a symptom from elsewhere with {@link limberboard.desktop.trace.TraceModel#start}.
 * </ol>
 *
 * <p><b>Choices made.</b> Cautions of the symptom stand alone on the screen before the first
 * question, until they are said to have been read; after that they stay as a band at the top. Each
 * boat has its own trace, so looking at another boat loses nothing. When the library is read anew
 * the answers are given again to the new page, and those that no longer exist are left out.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; chances and next steps are
 * computed by the background.
 */
package limberboard.desktop.trace;
