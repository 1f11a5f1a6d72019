/**
 * The one search field over everything.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.find.SearchModel} and tell it when there is something to
 *       search ({@link limberboard.desktop.find.SearchModel#ready});
 *   <li>put a {@link limberboard.desktop.find.SearchField} on the model into the window;
 *   <li>say what happens when something is opened.
 * </ol>
 *
 * <pre>{@code
 * import java.time.Clock;
 * import java.util.*;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.find.*;
 * import limberboard.library.Library;
 * import limberboard.library.page.Kind;
 * import limberboard.search.*;
 *
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * session.replace(new Workspace(Library.empty(), List.of(), List.of(), List.of()));
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var model = new SearchModel(session, background, Runnable::run); // waits for no pause
 * var hit =
 *     new Hit("bend", Kind.TOPIC, "Bends", 1, Excerpt.EMPTY, new Fit.Yes("It fits all boats."));
 * model.ready(query -> new SearchResults(List.of(hit), Optional.empty()));
 * model.type("how do I join two ropes");
 * assert model.isUpToDate() && model.found().get(0).target().equals(new Found.PageTarget("bend"));
 * }</pre>
 *
 * <p><b>Choices made.</b> Searching begins after a pause in typing and off the event thread;
 * outcomes of older searches are dropped. Enter before the outcome is there opens the first hit
 * once it is. The hits lie in the window's own layer above everything else, so that the field keeps
 * the focus.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.find;
