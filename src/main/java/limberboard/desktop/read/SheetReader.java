package limberboard.desktop.read;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.Theme;
import limberboard.print.page.CutPage;

/**
 * One sheet at a time in a reading pane, such as a list of work: rendered off the event thread, in
 * a wider column than a page, because sheets are tables. For the event thread only.
 */
public final class SheetReader {
  private final Settings settings;
  private final PageRenderer renderer;
  private final Latest latest;
  private final ReadingPane pane;
  private Optional<SheetWanted> asked = Optional.empty();
  private Optional<Rendered> shown = Optional.empty();
  private boolean narrow;

  private record SheetWanted(CutPage sheet, boolean dark, ScreenStyle style) {}

  /**
   * A reader without a sheet.
   *
   * @param settings tells the text size and when the theme changes
   * @param background renders and lays out
   * @param follow takes the id of a page whose link was followed
   */
  public SheetReader(
      Settings settings, PageRenderer renderer, Background background, Consumer<String> follow) {
    this.settings = settings;
    this.renderer = renderer;
    this.latest = new Latest(background);
    this.pane =
        new ReadingPane(background, address -> follow.accept(address.replaceFirst("^page:", "")));
    pane.zoomBy(settings::stepText);
    settings.onChange(this::refresh);
  }

  /** Sets sheets in the column of pages, for those that are running text. */
  public SheetReader inPageColumn() {
    narrow = true;
    return this;
  }

  /** The pane, to be put into the window. */
  public ReadingPane pane() {
    return pane;
  }

  /**
   * Shows a sheet; one with the title and the boat of before is shown where it was scrolled to, and
   * one that is the same in everything is not shown anew.
   */
  public void show(CutPage sheet) {
    render(new SheetWanted(sheet, Theme.isDark(), style()));
  }

  private ScreenStyle style() {
    ScreenStyle style = ScreenStyle.now(settings.textPercent());
    return narrow ? style : style.wide();
  }

  /** Shows nothing, rather than something that is no longer so. */
  public void clear() {
    asked = Optional.empty();
    shown = Optional.empty();
    latest.drop();
    pane.clear();
  }

  private void refresh() {
    asked.ifPresent(now -> render(new SheetWanted(now.sheet(), Theme.isDark(), style())));
  }

  private void render(SheetWanted wanted) {
    if (asked.filter(wanted::equals).isEmpty()) {
      asked = Optional.of(wanted);
      latest.run(
          "Reading the sheet",
          () -> renderer.screen(wanted.sheet(), wanted.dark(), wanted.style()),
          this::take,
          this::failed);
    }
  }

  /** Why is said in the window; the page of before is no longer what was asked for. */
  private void failed() {
    asked = Optional.empty();
    shown = Optional.empty();
    pane.clear();
  }

  private void take(Rendered rendered) {
    boolean sameSheet = shown.filter(before -> which(before).equals(which(rendered))).isPresent();
    shown = Optional.of(rendered);
    pane.show(rendered, sameSheet ? OptionalInt.empty() : OptionalInt.of(0));
  }

  private static String which(Rendered rendered) {
    return rendered.cut().title() + rendered.cut().cutFor();
  }
}
