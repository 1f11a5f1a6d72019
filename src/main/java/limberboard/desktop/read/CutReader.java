package limberboard.desktop.read;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JComponent;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.Theme;
import limberboard.library.Library;
import limberboard.print.cut.Cautions;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;

/**
 * One page at a time in a reading pane, rendered off the event thread, for the chosen boat or for
 * all boats. It is rendered once a change, and shown anew only when something in it is another. For
 * the event thread only.
 */
public final class CutReader {
  private final Session session;
  private final Settings settings;
  private final PageRenderer renderer;
  private final Latest latest;
  private final Papers papers;
  private final ReadingPane pane;
  private Optional<String> page = Optional.empty();
  private BiConsumer<String, Optional<String>> writing = (id, heading) -> {};
  private boolean forAllBoats;
  private boolean withFoot;
  private Optional<PageWanted> asked = Optional.empty();
  private Optional<Rendered> shown = Optional.empty();
  private OptionalInt place = OptionalInt.empty();
  private Optional<Predicate<Block.ShortCaution>> folding = Optional.empty();

  /** Everything that decides what a page looks like. */
  private record PageWanted(
      Library library,
      String page,
      Optional<Fitting> boat,
      boolean imperial,
      boolean dark,
      ScreenStyle style,
      Optional<Predicate<Block.ShortCaution>> folding) {
    /** The page as it is shown; on paper nothing is folded. */
    CutPage fold(CutPage cut) {
      return folding.map(isRead -> Cautions.folded(cut, isRead)).orElse(cut);
    }

    boolean isSame(PageWanted other) {
      return library == other.library
          && page.equals(other.page)
          && boat.equals(other.boat)
          && imperial == other.imperial
          && dark == other.dark
          && style.equals(other.style)
          && folding.equals(other.folding);
    }
  }

  /**
   * A reader without a page.
   *
   * @param background renders pages and lays them out
   * @param papers prints and saves them
   * @param follow takes the id of a page whose link was followed
   */
  public CutReader(
      Session session,
      Settings settings,
      PageRenderer renderer,
      Background background,
      Papers papers,
      Consumer<String> follow) {
    this.session = session;
    this.settings = settings;
    this.renderer = renderer;
    this.latest = new Latest(background);
    this.papers = papers;
    this.pane =
        new ReadingPane(background, address -> follow.accept(address.replaceFirst("^page:", "")));
    pane.zoomBy(settings::stepText);
    pane.offer(new PageAction("Print …", "control P", this::print));
    pane.offer(new PageAction("Save as PDF …", "control S", this::savePdf));
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

  /** Shows a page from its beginning, or where it is when it is shown already. */
  public void show(String id) {
    if (page.filter(id::equals).isEmpty()) {
      show(id, 0);
    }
  }

  /**
   * Shows a page; without effect when the library has none of this id.
   *
   * @param at how far it is scrolled, in pixels
   */
  public void show(String id, int at) {
    page = Optional.of(id);
    place = OptionalInt.of(at);
    refresh();
  }

  /** Whether pages are shown for all boats rather than for the chosen one. */
  public void forAllBoats(boolean all) {
    forAllBoats = all;
    refresh();
  }

  /** Lets which pages it points to, and which point here, stand at the foot of each page. */
  public CutReader withFoot() {
    withFoot = true;
    return this;
  }

  /**
   * Folds cautions that have been read to their names.
   *
   * @param isRead whether one has been; it is shown anew only when this is not equal to the last
   */
  public void fold(Predicate<Block.ShortCaution> isRead) {
    if (folding.filter(isRead::equals).isEmpty()) {
      folding = Optional.of(isRead);
      refresh();
    }
  }

  /**
   * Tells of cautions that somebody has read here.
   *
   * @param told takes the id of one, or an empty one for all of the page
   */
  public void onCautionsRead(Consumer<String> told) {
    pane.onCautionsRead(told);
  }

  /**
   * Offers the page that is shown to be written.
   *
   * @param write takes its id and the heading that is in sight
   */
  public CutReader writing(BiConsumer<String, Optional<String>> write) {
    writing = write;
    pane.offer(new PageAction("Write this page", "F4", this::write));
    return this;
  }

  /** Goes where the page that is shown is written. */
  public void write() {
    page.ifPresent(id -> writing.accept(id, pane.heading()));
  }

  /** What prints and saves. */
  public Papers papers() {
    return papers;
  }

  /** Prints the page that is shown. */
  public void print() {
    order().ifPresent(papers::print);
  }

  /** Saves the page that is shown as PDF. */
  public void savePdf() {
    order().ifPresent(papers::save);
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
    PageWanted wanted =
        new PageWanted(
            order.library(),
            order.page().id(),
            order.boat(),
            order.imperial(),
            dark,
            style,
            folding);
    if (asked.filter(wanted::isSame).isPresent()) {
      move();
      return;
    }
    asked = Optional.of(wanted);
    latest.run(
        "Reading the page",
        () -> renderer.screen(wanted.fold(cut(order)), dark, style),
        this::take,
        this::failed);
  }

  private CutPage cut(PageRenderer.Order order) {
    return withFoot ? PageFoot.under(order.cut(), order.library()) : order.cut();
  }

  /** The page that is wanted is there or on its way already. */
  private void move() {
    if (place.isPresent() && shown.filter(this::isWanted).isPresent()) {
      pane.show(shown.get(), place);
      place = OptionalInt.empty();
    }
  }

  private boolean isWanted(Rendered rendered) {
    return page.filter(rendered.cut().id()::equals).isPresent();
  }

  /** Why is said in the window; the page of before is no longer what was asked for. */
  private void failed() {
    asked = Optional.empty();
    shown = Optional.empty();
    pane.clear();
  }

  private void take(Rendered rendered) {
    if (place.isPresent() || shown.filter(rendered::isSame).isEmpty()) {
      shown = Optional.of(rendered);
      pane.show(rendered, place);
      place = OptionalInt.empty();
    }
  }
}
