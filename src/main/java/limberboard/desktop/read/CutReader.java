package limberboard.desktop.read;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.Theme;
import limberboard.library.Page;

/**
 * One page at a time in a reading pane, rendered off the event thread, for the chosen boat or for
 * all boats. For the event thread only.
 */
public final class CutReader {
  private final Session session;
  private final Settings settings;
  private final PageRenderer renderer;
  private final Latest latest;
  private final PdfSaver saver;
  private final ReadingPane pane;
  private Optional<String> page = Optional.empty();
  private boolean forAllBoats;
  private Consumer<Rendered> shown = rendered -> {};
  private Optional<Shown> onScreen = Optional.empty();

  /** What is on the screen. */
  private record Shown(
      Page<?> page, Optional<Fitting> boat, boolean imperial, boolean dark, ScreenStyle style) {}

  /**
   * A reader without a page.
   *
   * @param follow takes the id of a page whose link was clicked
   */
  public CutReader(
      Session session,
      Settings settings,
      PageRenderer renderer,
      Latest latest,
      PdfSaver saver,
      Consumer<String> follow) {
    this.session = session;
    this.settings = settings;
    this.renderer = renderer;
    this.latest = latest;
    this.saver = saver;
    this.pane = new ReadingPane(address -> follow.accept(address.replaceFirst("^page:", "")));
    session.onChange(this::refresh);
    settings.onChange(this::refresh);
  }

  /** What is put into the window. */
  public JComponent component() {
    return pane;
  }

  /** The pane, for its position and its focus. */
  public ReadingPane pane() {
    return pane;
  }

  /** Says what happens each time a page has been put on the screen. */
  public void onShown(Consumer<Rendered> listener) {
    shown = listener;
  }

  /** Shows a page; without effect when the library has none of this id. */
  public void show(String id) {
    page = Optional.of(id);
    refresh();
  }

  /** Whether pages are shown for all boats rather than for the chosen one. */
  public void forAllBoats(boolean all) {
    forAllBoats = all;
    refresh();
  }

  /** What saves as PDF. */
  public PdfSaver saver() {
    return saver;
  }

  /** Saves the page that is shown as PDF. */
  public void savePdf() {
    order().ifPresent(saver::save);
  }

  private Optional<PageRenderer.Order> order() {
    return page.flatMap(session.library()::page)
        .map(
            found -> new PageRenderer.Order(session.library(), found, boat(), settings.imperial()));
  }

  private Optional<Fitting> boat() {
    return forAllBoats ? Optional.empty() : session.fitting();
  }

  private void refresh() {
    order().ifPresent(this::render);
  }

  private void render(PageRenderer.Order order) {
    boolean dark = Theme.isDark();
    ScreenStyle style = ScreenStyle.now(settings.textPercent());
    Shown wanted = new Shown(order.page(), order.boat(), order.imperial(), dark, style);
    boolean samePage = onScreen.map(now -> now.page().id().equals(order.page().id())).orElse(false);
    onScreen = Optional.of(wanted);
    latest.run(
        "Laying out the page",
        () -> renderer.screen(order, dark, style),
        rendered -> {
          pane.show(rendered, samePage);
          shown.accept(rendered);
        });
  }
}
