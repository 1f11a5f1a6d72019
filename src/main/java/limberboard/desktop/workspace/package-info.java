/**
 * The place for the workspace as a whole: findings, quick notes, the history of its pages, and
 * sharing them.
 *
 * <p>To use it: make a {@link limberboard.desktop.workspace.WorkspacePlace} from {@link
 * limberboard.desktop.read.PlaceTools} and what its rooms touch outside the window; each room below
 * has a model that knows no Swing, and a view of it.
 *
 * <pre>{@code
 * import limberboard.desktop.workspace.WorkspacePlace;
 *
 * assert limberboard.desktop.base.Place.class.isAssignableFrom(WorkspacePlace.class);
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0052-keeping-in-the-window.md}.
 *
 * <p><b>Threads.</b> Everything belongs to the event thread; versions are read and written in the
 * background.
 */
package limberboard.desktop.workspace;
