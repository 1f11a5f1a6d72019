/**
 * The place where the library is read.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.pages.PagesModel}, which knows no Swing;
 *   <li>make a {@link limberboard.desktop.pages.PagesPlace} on it and give it to the window;
 *   <li>open pages from elsewhere with {@link limberboard.desktop.pages.PagesModel#open}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.time.Clock;
 * import java.util.*;
 * import limberboard.boat.Workspace;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.pages.PagesModel;
 * import limberboard.library.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * for (String id : List.of("bends", "hitches")) {
 *   Path page = folders.articles().resolve("topics/" + id + ".md");
 *   Files.writeString(page, "---\ntitle: About " + id + "\n---\nTie it.\n");
 * }
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * var model = new PagesModel(session, new Memory(new Forgetful()));
 * Library library = new LibraryReader(folders).read();
 * session.replace(new Workspace(library, List.of(), List.of(), List.of()));
 * model.open("bends");
 * model.open("hitches");
 * model.back();
 * assert model.page().orElseThrow().title().equals("About bends") && model.canGoForward();
 * }</pre>
 *
 * <p><b>Choices made.</b> The contents are filed by system, as somebody with a boat in front of
 * them thinks, and within a system by kind; what belongs to no system is filed by kind. A filter
 * looks at titles, summaries and what people call things. Which pages a page points to, and which
 * point here, stand at its foot; beside it stands the boat. Back and forward go over the other
 * places of the window too. What is wrong in the files is shown file by file, with the text of the
 * file at the line in question.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.pages;
