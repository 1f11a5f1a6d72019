package limberboard.desktop.pages;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JTree;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import limberboard.desktop.look.Palette;

/** Draws headings with their number of pages, and pages; what is for other boats says so. */
final class ContentsRenderer extends DefaultTreeCellRenderer {
  @Override
  public Component getTreeCellRendererComponent(
      JTree tree,
      Object value,
      boolean isSelected,
      boolean expanded,
      boolean isLeaf,
      int row,
      boolean focus) {
    Object node = ((DefaultMutableTreeNode) value).getUserObject();
    super.getTreeCellRendererComponent(tree, words(node), isSelected, expanded, isLeaf, row, focus);
    setIcon(null);
    setToolTipText(words(node));
    setBorder(BorderFactory.createEmptyBorder(4, 4, 4, 8));
    if (node instanceof Contents.Leaf leaf && !leaf.fits() && !isSelected) {
      setForeground(Palette.QUIET.color());
    }
    return this;
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
