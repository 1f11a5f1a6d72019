package limberboard.desktop.read;

import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Keys;
import limberboard.print.ClosedUserAgent;
import limberboard.print.Picture;
import limberboard.print.ScreenPictures;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.simple.XHTMLPanel;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;
import org.xhtmlrenderer.swing.BasicPanel;
import org.xhtmlrenderer.swing.FSMouseListener;
import org.xhtmlrenderer.swing.LinkListener;

/**
 * A page in a scrolling column. The wheel, arrows, Page Up and Down, Space, Home and End move it.
 */
public final class ReadingPane extends JPanel {
  private static final int LINE = 48;
  private final XHTMLPanel page = new Focusable();
  private transient Map<String, Picture> pictures = Map.of();
  private final JScrollPane scroller;
  private final transient Consumer<String> follow;

  /**
   * An empty pane.
   *
   * @param follow takes the address of a link that was clicked
   */
  public ReadingPane(Consumer<String> follow) {
    super(new BorderLayout());
    this.follow = follow;
    SharedContext context = page.getSharedContext();
    context.setReplacedElementFactory(
        new ScreenPictures(address -> Optional.ofNullable(pictures.get(address))));
    context.setUserAgentCallback(new ClosedUserAgent());
    context.getTextRenderer().setSmoothingThreshold(0);
    listenToLinks();
    page.setFocusable(true);
    page.setName("page");
    page.getAccessibleContext().setAccessibleName("Page");
    scroller = new JScrollPane(page);
    scroller.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    scroller.getVerticalScrollBar().setUnitIncrement(LINE);
    add(scroller, BorderLayout.CENTER);
    keys();
  }

  private void listenToLinks() {
    List<FSMouseListener> listeners = List.copyOf(page.getMouseTrackingListeners());
    listeners.stream()
        .filter(LinkListener.class::isInstance)
        .forEach(page::removeMouseTrackingListener);
    page.addMouseTrackingListener(
        new LinkListener() {
          @Override
          public void linkClicked(BasicPanel panel, String uri) {
            follow.accept(uri);
          }
        });
  }

  private void keys() {
    Keys.focused(page, "DOWN", () -> scroll(LINE));
    Keys.focused(page, "UP", () -> scroll(-LINE));
    Keys.focused(page, "PAGE_DOWN", () -> scroll(screen()));
    Keys.focused(page, "PAGE_UP", () -> scroll(-screen()));
    Keys.focused(page, "SPACE", () -> scroll(screen()));
    Keys.focused(page, "shift SPACE", () -> scroll(-screen()));
    Keys.focused(page, "HOME", () -> scroll(-bar().getMaximum()));
    Keys.focused(page, "END", () -> scroll(bar().getMaximum()));
  }

  private JScrollBar bar() {
    return scroller.getVerticalScrollBar();
  }

  private int screen() {
    return Math.max(LINE, scroller.getViewport().getHeight() - LINE);
  }

  private void scroll(int by) {
    bar().setValue(bar().getValue() + by);
  }

  /** Shows a page from its beginning, or, when it is the same page again, where it was. */
  public void show(Rendered rendered, boolean samePlace) {
    int at = samePlace ? bar().getValue() : 0;
    pictures = rendered.pictures();
    page.setDocument(rendered.document(), "page:", new XhtmlNamespaceHandler());
    page.getAccessibleContext().setAccessibleName(rendered.cut().title());
    page.getAccessibleContext().setAccessibleDescription(rendered.spoken());
    SwingUtilities.invokeLater(() -> bar().setValue(at));
  }

  /** Where the page has been scrolled to, in pixels. */
  public int position() {
    return bar().getValue();
  }

  /** Scrolls to a position of before. */
  public void position(int pixels) {
    SwingUtilities.invokeLater(() -> bar().setValue(pixels));
  }

  /** What takes the focus. */
  public JComponent region() {
    return page;
  }

  /** Shows by a line at its left that the keyboard scrolls it. */
  private static final class Focusable extends XHTMLPanel {
    Focusable() {
      addFocusListener(
          new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
              repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
              repaint();
            }
          });
      addMouseListener(
          new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
              requestFocusInWindow();
            }
          });
    }

    @Override
    public void paintComponent(Graphics g) {
      super.paintComponent(g);
      if (isFocusOwner()) {
        g.setColor(Palette.ACCENT.color());
        g.fillRect(0, getVisibleRect().y, 3, getVisibleRect().height);
      }
    }
  }
}
