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
 * <pre>{@code
 * import java.time.Clock;
 * import java.util.*;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.boats.*;
 * import limberboard.library.Library;
 *
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * session.replace(new Workspace(Library.empty(), List.of(), List.of(), List.of()));
 * var notices = new Notices();
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), notices);
 * BoatStore store = (library, was, boat) -> new BoatWriter.Saved(boat);
 * var boats = new BoatFormModel(session, store, background, notices);
 * boats.newBoat();
 * EditedBoat form = boats.form();
 * form.set(Field.BUILT, "soon");
 * assert form.draft().text(Field.BUILT).equals("soon"); // nothing typed is refused
 * assert form.problems().containsKey(Field.BUILT) && !boats.save();
 * form.undo();
 * assert !form.isChanged();
 * }</pre>
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
