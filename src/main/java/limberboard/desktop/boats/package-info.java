/**
 * The place where boats are entered and kept.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.boats.BoatFormModel}, which knows no Swing;
 *   <li>make a {@link limberboard.desktop.boats.BoatsPlace} on it and give it to the window;
 *   <li>open a boat from elsewhere with {@link limberboard.desktop.boats.BoatFormModel#open}.
 * </ol>
 *
 * <p><b>Choices made.</b> What is in the form is text until it is saved, so that nothing a person
 * types is ever refused or changed under their hands; what is wrong stands beside the field. The
 * form offers only what the model had in the year of building. Each step can be undone until it is
 * saved, and going elsewhere with unsaved changes asks first.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; boats are written by the
 * background.
 */
package limberboard.desktop.boats;
