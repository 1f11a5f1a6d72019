package limberboard.desktop.read;

import java.util.function.Consumer;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.parts.Divider;

/**
 * What every place of the window is made with.
 *
 * @param session tells library and boat
 * @param settings how things are shown
 * @param background works things out and renders them, off the event thread
 * @param notices messages to the person in front of the window
 * @param navigator the ways to other places
 * @param dividers remembers dividers
 * @param drawings drawings of boats and checks
 * @param renderer renders pages
 * @param papers prints and saves sheets
 */
public record PlaceTools(
    Session session,
    Settings settings,
    Background background,
    Notices notices,
    Navigator navigator,
    Divider.Memory dividers,
    PagePictures drawings,
    PageRenderer renderer,
    Papers papers) {

  /** A reader of pages cut to the boat, whose links are followed so. */
  public CutReader reader(Consumer<String> follow) {
    return new CutReader(session, settings, renderer, background, papers, follow)
        .writing(navigator::writePage);
  }

  /** A reader of sheets, whose links are followed so. */
  public SheetReader sheets(Consumer<String> follow) {
    return new SheetReader(settings, renderer, background, follow);
  }
}
