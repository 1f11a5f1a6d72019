/**
 * A symptom's own editor: its causes and checks as a table of likelihood words filled by keyboard,
 * the tree for the chosen boat beside it, what is wrong, and each cause tried.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.write.symptom.SymptomModel} with what takes each changed
 *       page, and a {@link limberboard.desktop.write.symptom.SymptomPanel} on it;
 *   <li>show it a page with {@link limberboard.desktop.write.symptom.SymptomModel#show}, again
 *       whenever its text was changed elsewhere.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.Clock;
 * import java.util.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.write.symptom.*;
 * import limberboard.library.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.library.page.Kind;
 * import limberboard.writing.PageText;
 * import limberboard.writing.typing.PageTyping;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * var tools = new SymptomTools(session, background, background, background, Runnable::run);
 * List<PageText> changes = new ArrayList<>();
 * var model = new SymptomModel(tools, changes::add);
 * var typing = new PageTyping(
 *     new LibraryReader(folders).typing("articles/symptoms/wet.md", Kind.SYMPTOM));
 * model.show("wet", new PageText("---\ntitle: Wet\n---\n"), typing::read);
 * model.outline("Causes\nThe hatch leaks\nChecks\nDoes it come with rain? yes, no");
 * assert model.isOutlining() && model.makeTable();
 * assert model.table().orElseThrow().causes().get(0).title().equals("The hatch leaks");
 * assert changes.get(changes.size() - 1).equals(model.page());
 * }</pre>
 *
 * <p><b>Choices made.</b> Everything of a page that the table has can be reached with the arrows:
 * its name, the checks above their answers, the causes with their weights. What is typed stands in
 * one line above the table, where there is room for a sentence. An outline is the page's body until
 * its table is made, so that it is kept like any other text. While something is missing the tree is
 * drawn from a draft that is filled up, and says of what.
 *
 * <p><b>Threads.</b> Everything belongs to the event thread; reading, trees and plans run in the
 * background, and only what is newest counts.
 */
package limberboard.desktop.write.symptom;
