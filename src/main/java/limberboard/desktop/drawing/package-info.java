/**
 * The drawing of a boat, whose zones can be pointed at.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make one {@link limberboard.desktop.drawing.ZoneChoice} for all views of a boat;
 *   <li>make a {@link limberboard.desktop.drawing.BoatView} each for profile and deck plan, and
 *       hand them the model's drawing and a {@link limberboard.desktop.drawing.ZoneMap};
 *   <li>listen to the choice.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import limberboard.desktop.drawing.*;
 * import limberboard.library.LibraryReader;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var library = new LibraryReader(new WorkspaceFolders(Path.of(""))).read();
 * ZoneMap map = ZoneMap.profile(library.model("tarnwick-30").orElseThrow().details());
 * ZoneChoice choice = new ZoneChoice();
 * for (String zone : map.ids()) {
 *   map.middle(zone).ifPresent(point -> choice.point(map.at(point.getX(), point.getY())));
 *   assert choice.pointed().isPresent() : zone;
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> Views share one choice, so that what is pointed at in one lights up in
 * the others. Where outlines overlap, the smallest one under the pointer counts, because the large
 * ones can be reached elsewhere. Arrow keys go to the nearest zone in their direction, as the eye
 * would.
 *
 * <p><b>Threads.</b> {@link limberboard.desktop.drawing.ZoneMap} is immutable; everything else
 * belongs to the event thread.
 */
package limberboard.desktop.drawing;
