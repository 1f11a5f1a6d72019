package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Where the trail stands: below the question while checks are made, and below the causes once a
 * page wants all the height at the left, or when there is little room. It takes what it needs, up
 * to a third.
 */
final class TrailSlots {
  private static final int SHARE = 3;
  private final TrailPanel trail;
  private final JPanel left = new JPanel(new BorderLayout(0, 8));
  private final JPanel right = new JPanel(new BorderLayout(0, 8));

  TrailSlots(TrailPanel trail, JComponent step, JComponent causes) {
    this.trail = trail;
    left.setOpaque(false);
    right.setOpaque(false);
    left.add(step, BorderLayout.CENTER);
    right.add(causes, BorderLayout.CENTER);
  }

  JPanel left() {
    return left;
  }

  JPanel right() {
    return right;
  }

  /** Puts the trail where it belongs at this stage and in this much room. */
  void place(Stage stage, boolean narrow) {
    JPanel wanted = stage == Stage.CHECK && !narrow ? left : right;
    if (trail.getParent() != wanted) {
      left.remove(trail);
      right.remove(trail);
      wanted.add(trail, BorderLayout.SOUTH);
    }
    int most = Math.max(120, wanted.getHeight() / SHARE);
    trail.setPreferredSize(null);
    int needs = trail.wantedHeight(Math.max(200, wanted.getWidth()));
    trail.setPreferredSize(new Dimension(10, Math.min(most, needs)));
    left.revalidate();
    right.revalidate();
  }
}
