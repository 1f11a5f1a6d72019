package limberboard.desktop.read;

import java.awt.BorderLayout;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Keys;

/**
 * A page in a scrolling column, laid out off the event thread. The wheel, arrows, Page Up and Down,
 * Space, Home and End move it; its text can be selected, copied and searched. For the event thread
 * only.
 */
public final class ReadingPane extends JPanel {
  private static final int LINE = 48;
  private final transient Latest layouts;
  private final PageView page;
  private final transient CautionJumps cautions;
  private final JScrollPane scroller;
  private final FindBar bar;
  private final transient PageMenu menu;
  private transient Optional<Rendered> wanted = Optional.empty();
  private transient OptionalInt place = OptionalInt.empty();
  private int askedWidth;
  private transient Finds finds = Finds.NONE;
  private transient Consumer<String> read = caution -> {};

  /**
   * An empty pane.
   *
   * @param background lays pages out
   * @param follow takes the address of a link that is followed
   */
  public ReadingPane(Background background, Consumer<String> follow) {
    super(new BorderLayout());
    layouts = new Latest(background);
    page = new PageView(address -> follow(address, follow));
    cautions = new CautionJumps(page, caution -> read.accept(caution));
    menu = new PageMenu(page, this::find);
    bar = new FindBar(this::search, this::findNext, this::endFinding);
    PagePointer.on(page, menu::show);
    PageKeys.on(page, menu::show);
    scroller = new JScrollPane(page);
    scroller.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    scroller.getVerticalScrollBar().setUnitIncrement(LINE);
    add(scroller, BorderLayout.CENTER);
    add(bar, BorderLayout.SOUTH);
    scrolling();
    findingKeys();
  }

  private void follow(String address, Consumer<String> elsewhere) {
    if (!cautions.goes(address)) {
      elsewhere.accept(CautionJumps.page(address));
    }
  }

  private void scrolling() {
    Keys.within(this, "F7", cautions::toggle);
    Keys.focused(page, "DOWN", () -> scroll(LINE));
    Keys.focused(page, "UP", () -> scroll(-LINE));
    Keys.focused(page, "PAGE_DOWN", () -> scrollScreens(1));
    Keys.focused(page, "PAGE_UP", () -> scrollScreens(-1));
    Keys.focused(page, "SPACE", () -> scrollScreens(1));
    Keys.focused(page, "shift SPACE", () -> scrollScreens(-1));
    Keys.focused(page, "HOME", () -> scroll(-vertical().getMaximum()));
    Keys.focused(page, "END", () -> scroll(vertical().getMaximum()));
  }

  /** Searching in the page, for keys that work wherever the focus is. */
  public Place.Find finding() {
    return new Place.Find() {
      @Override
      public void begin() {
        find();
      }

      @Override
      public void next(boolean forward) {
        findNext(forward ? 1 : -1);
      }
    };
  }

  private void findingKeys() {
    Keys.within(this, "control F", this::find);
    Keys.focused(page, "F3", () -> findNext(1));
    Keys.focused(page, "shift F3", () -> findNext(-1));
    Keys.focused(
        page,
        "ESCAPE",
        () -> {
          page.leaveLink();
          endFinding();
        });
  }

  private JScrollBar vertical() {
    return scroller.getVerticalScrollBar();
  }

  private void scroll(int by) {
    vertical().setValue(vertical().getValue() + by);
  }

  /** Scrolls by what is in sight, so many times; also when the focus is elsewhere. */
  public void scrollScreens(int by) {
    scroll(by * Math.max(LINE, scroller.getViewport().getHeight() - LINE));
  }

  /** Offers something in the context menu and by its key. */
  public void offer(PageAction action) {
    menu.offer(action);
    Keys.within(this, action.key(), action.action());
  }

  /**
   * Tells of cautions that have been read.
   *
   * @param told takes the id of one, or an empty one for all of the page
   */
  void onCautionsRead(Consumer<String> told) {
    read = told;
  }

  /** Lets Ctrl and the wheel change the size of the text: by 1 larger, by -1 smaller. */
  public void zoomBy(IntConsumer step) {
    page.addMouseWheelListener(
        e -> {
          if (e.isControlDown()) {
            step.accept(-Integer.signum(e.getWheelRotation()));
          } else {
            pass(e);
          }
        });
  }

  private void pass(MouseWheelEvent e) {
    scroller.dispatchEvent(SwingUtilities.convertMouseEvent(page, e, scroller));
  }

  /**
   * Shows a page as soon as it has been laid out.
   *
   * @param rendered the page
   * @param at how far it is scrolled, in pixels; empty to stay where one is, on the same page
   */
  public void show(Rendered rendered, OptionalInt at) {
    wanted = Optional.of(rendered);
    if (at.isPresent()) {
      place = at;
    }
    layOut();
  }

  /** Scrolls to the beginning. */
  public void toTop() {
    scroll(-vertical().getMaximum());
  }

  /** Shows nothing, rather than something that is no longer so. */
  public void clear() {
    wanted = Optional.empty();
    layouts.drop();
    page.clear();
  }

  private void layOut() {
    int width = room();
    if (wanted.isEmpty() || width <= 0) {
      return;
    }
    Rendered now = wanted.get();
    askedWidth = width;
    layouts.run("Laying out the page", () -> PageLayout.of(now, width), laid -> take(now, laid));
  }

  /** The room for a page: without the scroll bar, so that its coming and going moves nothing. */
  private int room() {
    return getWidth() - vertical().getPreferredSize().width;
  }

  private void take(Rendered rendered, Laid laid) {
    LaidOutText before = page.text();
    int at = place.orElseGet(() -> laid.sameTop(before, vertical().getValue()));
    place = OptionalInt.empty();
    page.getAccessibleContext().setAccessibleName(rendered.cut().title());
    page.getAccessibleContext().setAccessibleDescription(rendered.cut().cutFor());
    page.show(laid);
    scroller.validate();
    vertical().setValue(at);
    if (bar.isVisible()) {
      finds =
          Finds.of(laid.text(), bar.words(), finds.now().map(LaidOutText.Part::start).orElse(0));
      bar.count(finds);
      page.markOnly(finds);
    }
  }

  /** Lays the page out anew when there is more or less room for it than before. */
  @Override
  public void doLayout() {
    super.doLayout();
    if (room() != askedWidth) {
      layOut();
    }
  }

  /** Where the page is scrolled to, or will be once it has been laid out, in pixels. */
  public int position() {
    return place.orElseGet(() -> vertical().getValue());
  }

  /** The last heading above the upper third of what is in sight; empty where there is none. */
  public Optional<String> heading() {
    int top = page.getVisibleRect().y + page.getVisibleRect().height / 3;
    return page.text().passages().stream()
        .filter(each -> each.role() instanceof LaidOutPassage.Heading)
        .filter(each -> each.box().y <= top)
        .reduce((before, after) -> after)
        .map(each -> page.text().plain(new LaidOutText.Part(each.start(), each.end())));
  }

  /** What takes the focus. */
  public JComponent region() {
    return page;
  }

  /** Opens the bar that finds words on the page. */
  public void find() {
    bar.open(page.text().plain(page.selection().part()));
    revalidate();
  }

  private void search() {
    int from = page.text().offsetAt(page.getVisibleRect().getLocation());
    finds = Finds.of(page.text(), bar.words(), from);
    bar.count(finds);
    page.mark(finds);
  }

  private void findNext(int by) {
    if (!bar.isVisible()) {
      find();
      return;
    }
    finds = finds.step(by);
    bar.count(finds);
    page.mark(finds);
  }

  private void endFinding() {
    if (bar.isVisible()) {
      bar.setVisible(false);
      finds.now().ifPresent(page.selection()::select);
      finds = Finds.NONE;
      page.mark(finds);
      page.requestFocusInWindow();
      revalidate();
    }
  }
}
