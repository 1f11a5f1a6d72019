package limberboard.desktop.read;

import java.util.Optional;
import java.util.function.Consumer;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.Theme;
import limberboard.print.CutPage;

/**
 * One sheet at a time in a reading pane, such as a list of work: rendered off the event thread, in
 * a wider column than a page, because sheets are tables. For the event thread only.
 */
public final class SheetReader {
  private final Settings settings;
  private final PageRenderer renderer;
  private final Latest latest;
  private final ReadingPane pane;
  private Optional<CutPage> sheet = Optional.empty();
  private String shown = "";

  /**
   * A reader without a sheet.
   *
   * @param settings tells the text size and when the theme changes
   * @param latest renders
   * @param follow takes the id of a page whose link was clicked
   */
  public SheetReader(
      Settings settings, PageRenderer renderer, Latest latest, Consumer<String> follow) {
    this.settings = settings;
    this.renderer = renderer;
    this.latest = latest;
    this.pane = new ReadingPane(address -> follow.accept(address.replaceFirst("^page:", "")));
    settings.onChange(this::refresh);
  }

  /** The pane, to be put into the window. */
  public ReadingPane pane() {
    return pane;
  }

  /** Shows a sheet; one with the title and the boat of before is shown where it was scrolled to. */
  public void show(CutPage other) {
    if (sheet.filter(now -> now == other).isEmpty()) {
      sheet = Optional.of(other);
      refresh();
    }
  }

  private void refresh() {
    sheet.ifPresent(this::render);
  }

  private void render(CutPage wanted) {
    boolean dark = Theme.isDark();
    ScreenStyle style = ScreenStyle.now(settings.textPercent()).wide();
    latest.run(
        "Laying out the sheet",
        () -> renderer.screen(wanted, dark, style),
        rendered -> {
          String which = wanted.title() + wanted.cutFor();
          pane.show(rendered, which.equals(shown));
          shown = which;
        });
  }
}
