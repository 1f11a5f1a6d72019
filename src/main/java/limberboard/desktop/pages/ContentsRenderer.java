package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTree;
import javax.swing.JViewport;
import javax.swing.plaf.basic.BasicTreeUI;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.TreeCellRenderer;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/**
 * Draws headings with their number of pages, and pages, over as many lines as a title needs; what
 * is for other boats says so.
 */
final class ContentsRenderer extends JPanel implements TreeCellRenderer {
  private static final int LEAST = 60;
  private final Wrapped title = Text.plain("");

  ContentsRenderer() {
    super(new BorderLayout());
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(4, 4, 4, 8));
    add(title);
  }

  @Override
  public Component getTreeCellRendererComponent(
      JTree tree,
      Object value,
      boolean isSelected,
      boolean expanded,
      boolean isLeaf,
      int row,
      boolean focus) {
    DefaultMutableTreeNode branch = (DefaultMutableTreeNode) value;
    Object node = branch.getUserObject();
    title.setFont(tree.getFont());
    title.setText(words(node));
    boolean other = node instanceof Contents.Leaf leaf && !leaf.fits() && !isSelected;
    title.setForeground((other ? Palette.QUIET : Palette.INK).color());
    getAccessibleContext().setAccessibleName(words(node));
    setSize(room(tree, branch.getLevel()), Math.max(1, getHeight()));
    return this;
  }

  /** The width that the tree leaves for a title at this level. */
  private static int room(JTree tree, int level) {
    Container parent = tree.getParent();
    int width = parent instanceof JViewport view ? view.getWidth() : tree.getWidth();
    int indent =
        tree.getUI() instanceof BasicTreeUI ui
            ? ui.getLeftChildIndent() + ui.getRightChildIndent()
            : 0;
    return Math.max(LEAST, width - indent * level - 2);
  }

  @Override
  public Dimension getPreferredSize() {
    int inside = getWidth() - getInsets().left - getInsets().right;
    title.setSize(Math.max(1, inside), Math.max(1, title.getHeight()));
    int high = title.getPreferredSize().height + getInsets().top + getInsets().bottom;
    return new Dimension(getWidth(), high);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setOpaque(false);
  }

  private static String words(Object node) {
    if (node instanceof Contents.Group group) {
      return group.title() + " (" + group.pages() + ")";
    }
    if (node instanceof Contents.Leaf leaf) {
      return leaf.title() + (leaf.fits() ? "" : " (other boats)");
    }
    return "";
  }
}
