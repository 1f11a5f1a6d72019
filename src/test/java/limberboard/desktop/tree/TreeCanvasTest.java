package limberboard.desktop.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** The view of a tree without a window: painted into a picture. */
class TreeCanvasTest {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 600;
  private final TreeCanvas view = new TreeCanvas();
  private final JScrollPane scroller = new JScrollPane(view);
  private final TreeWalk walk = new TreeWalk(SmallTrees.regular(7, 3));

  private void show() {
    walk.unfoldAll();
    scroller.setSize(WIDTH, HEIGHT);
    view.show(Optional.of(walk));
    layOut();
  }

  private void layOut() {
    scroller.doLayout();
    scroller.getViewport().doLayout();
  }

  private BufferedImage paint() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setClip(0, 0, WIDTH, HEIGHT);
    scroller.getViewport().paint(g);
    g.dispose();
    return image;
  }

  private void onEventThread(Runnable action) throws Exception {
    SwingUtilities.invokeAndWait(action);
  }

  @Test
  void ofAThousandForksOnlyThoseInSightArePainted() throws Exception {
    onEventThread(this::show);
    assertThat(walk.visible()).hasSize(1093);
    onEventThread(() -> view.sight().zoom(Zoom.USUAL));
    onEventThread(this::layOut);
    onEventThread(() -> view.sight().reveal());
    onEventThread(this::paint);
    assertThat(view.painted()).isBetween(1, 60);
    onEventThread(view.sight()::fit);
    onEventThread(this::layOut);
    onEventThread(this::paint);
    assertThat(view.painted()).isGreaterThan(60);
  }

  @Test
  void theWheelZoomsWithControlAndKeepsThePointBelowThePointer() throws Exception {
    onEventThread(this::show);
    onEventThread(() -> view.sight().zoom(Zoom.USUAL));
    onEventThread(this::layOut);
    onEventThread(() -> view.sight().drag(0, -5000));
    Point corner = scroller.getViewport().getViewPosition();
    Point pointer = new Point(corner.x + 300, corner.y + 200);
    var below = view.sight().inLayout(pointer);
    onEventThread(() -> view.dispatchEvent(wheel(pointer, InputEvent.CTRL_DOWN_MASK, -1)));
    assertThat(view.sight().zoom().factor()).isGreaterThan(1);
    Point moved = scroller.getViewport().getViewPosition();
    var now = view.sight().inLayout(new Point(moved.x + 300, moved.y + 200));
    assertThat(now.distance(below)).isLessThan(2);
  }

  private MouseWheelEvent wheel(Point at, int held, int turns) {
    return new MouseWheelEvent(
        view,
        MouseWheelEvent.MOUSE_WHEEL,
        0,
        held,
        at.x,
        at.y,
        0,
        false,
        MouseWheelEvent.WHEEL_UNIT_SCROLL,
        3,
        turns);
  }

  @Test
  void whatIsFoldedStaysWhereItIsOnTheScreen() throws Exception {
    onEventThread(this::show);
    var fork = walk.tree().root().branches().get(1).then().orElseThrow();
    onEventThread(() -> walk.select(fork));
    onEventThread(() -> view.show(Optional.of(walk)));
    onEventThread(this::layOut);
    Rectangle before = inSight(view.onScreen(fork).orElseThrow());
    onEventThread(() -> walk.toggle(fork));
    onEventThread(() -> view.show(Optional.of(walk)));
    onEventThread(this::layOut);
    assertThat(
            inSight(view.onScreen(fork).orElseThrow()).getLocation().distance(before.getLocation()))
        .isLessThan(3);
  }

  private Rectangle inSight(Rectangle box) {
    Point corner = scroller.getViewport().getViewPosition();
    return new Rectangle(box.x - corner.x, box.y - corner.y, box.width, box.height);
  }

  @Test
  void saysWhatItIsAndWhatIsSelected() throws Exception {
    onEventThread(this::show);
    var accessible = view.getAccessibleContext();
    assertThat(accessible.getAccessibleRole()).isEqualTo(AccessibleRole.TREE);
    String root = accessible.getAccessibleDescription();
    assertThat(root).startsWith("Check: ").contains("1092 steps behind it");
    onEventThread(walk::right);
    onEventThread(() -> view.show(Optional.of(walk)));
    assertThat(accessible.getAccessibleDescription()).isNotEqualTo(root);
  }

  @Test
  void everyForkInSightOfTheFoldsIsAPartOfTheTreeForThoseWhoListen() throws Exception {
    onEventThread(this::show);
    onEventThread(walk::foldAgain);
    var tree = view.getAccessibleContext();
    assertThat(tree.getAccessibleChildrenCount()).isEqualTo(walk.visible().size());
    var root = tree.getAccessibleChild(0).getAccessibleContext();
    assertThat(root.getAccessibleName()).isEqualTo(ForkWords.spoken(walk, walk.tree().root()));
    assertThat(root.getAccessibleStateSet().toArray())
        .contains(AccessibleState.SELECTED, AccessibleState.EXPANDED);
    var next = tree.getAccessibleChild(1).getAccessibleContext();
    assertThat(next.getAccessibleIndexInParent()).isEqualTo(1);
    assertThat(next.getAccessibleStateSet().toArray())
        .contains(AccessibleState.COLLAPSED)
        .doesNotContain(AccessibleState.SELECTED);
    assertThat(tree.getAccessibleChild(walk.visible().size())).isNull();
  }
}
