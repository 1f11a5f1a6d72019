/**
 * The whole strategy for a fault, drawn as a tree that can be walked.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.tree.TreeModel}, which grows trees in the background, and
 *       tell it where the trace stands with {@link limberboard.desktop.tree.TreeModel#follow};
 *   <li>make a {@link limberboard.desktop.tree.TreePanel} on it;
 *   <li>say with {@link limberboard.desktop.tree.TreeModel#want} when somebody looks at it; nothing
 *       is worked out before.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.Optional;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.tree.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
 * var symptom = workspace.library().symptom("masthead-light-dead").orElseThrow();
 * Trace trace = Trace.begin(Fault.of(symptom, dunlin, workspace.library(), workspace.cases()));
 * var background = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
 * TreeModel model = new TreeModel(background);
 * model.follow(Optional.of(trace));
 * assert model.walk().isEmpty(); // nobody looks yet
 * model.want(true);
 * TreeWalk walk = model.walk().orElseThrow();
 * walk.right();
 * assert walk.isHere(walk.tree().root()) && walk.visible().contains(walk.selected());
 * }</pre>
 *
 * <p><b>Choices made.</b> The tree grows from the beginning of the trace, so that the way gone is
 * seen as well as the ways that are left; only when the owner has gone another way does it grow
 * from where the trace stands. {@link limberboard.desktop.tree.TreeWalk} knows what is selected and
 * what is folded, {@link limberboard.desktop.tree.TreeLayout} where everything lies; neither knows
 * Swing. The layout is made once for each state of the folds, and only what is in sight is painted.
 * Walking the tree never changes the trace.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; trees grow in the background.
 */
package limberboard.desktop.tree;
