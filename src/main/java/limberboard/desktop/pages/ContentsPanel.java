package limberboard.desktop.pages;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.event.TreeSelectionEvent;
import javax.swing.plaf.basic.BasicTreeUI;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.When;
import limberboard.words.CountWords;

/** The contents as a tree with a filter above it. */
final class ContentsPanel extends JPanel {
  private final transient PagesModel model;
  private final JTextField filter = new JTextField();
  private final transient Runnable read;
  private final JTree tree = new JTree(new DefaultMutableTreeNode());
  private final JButton problems;
  private transient List<Contents.Node> shown = List.of();
  private boolean refreshing;

  /**
   * The contents.
   *
   * @param read goes to the page that is open
   */
  ContentsPanel(PagesModel model, Runnable read) {
    super(new BorderLayout(0, 8));
    this.model = model;
    this.read = read;
    setBorder(BorderFactory.createEmptyBorder(12, 14, 8, 6));
    setOpaque(false);
    problems = Buttons.plain("", "problems", () -> model.showProblems(true));
    add(filterField(), BorderLayout.NORTH);
    add(scrollingTree(), BorderLayout.CENTER);
    add(problems, BorderLayout.SOUTH);
    model.onChange(this::refresh);
    refresh();
  }

  List<JComponent> regions() {
    return List.of(filter, tree);
  }

  private JComponent filterField() {
    filter.setName("filter");
    filter.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Filter the contents");
    filter.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    filter.getAccessibleContext().setAccessibleName("Filter the contents");
    When.typed(filter, () -> model.filter(filter.getText()));
    Keys.focused(filter, "DOWN", tree::requestFocusInWindow);
    Keys.focused(filter, "ESCAPE", () -> filter.setText(""));
    return filter;
  }

  private JComponent scrollingTree() {
    tree.setName("contents");
    tree.setRootVisible(false);
    tree.setScrollsOnExpand(false);
    tree.setShowsRootHandles(true);
    tree.setRowHeight(0);
    tree.setOpaque(false);
    tree.setCellRenderer(new ContentsRenderer());
    tree.getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
    tree.getAccessibleContext().setAccessibleName("Contents");
    tree.addTreeSelectionListener(this::selected);
    Keys.focused(tree, "ENTER", this::choose);
    tree.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseReleased(MouseEvent e) {
            TreePath path = tree.getPathForLocation(e.getX(), e.getY());
            if (path != null && nodeOf(path) instanceof Contents.Leaf) {
              read.run();
            }
          }
        });
    JScrollPane pane =
        new JScrollPane(
            tree, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    When.widened(pane.getViewport(), this::widened);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setOpaque(false);
    pane.getViewport().setOpaque(false);
    return pane;
  }

  /** Enter goes to the page, and unfolds or folds a heading. */
  private void choose() {
    TreePath path = tree.getSelectionPath();
    if (path == null) {
      return;
    }
    if (nodeOf(path) instanceof Contents.Leaf leaf) {
      model.open(leaf.id());
      read.run();
    } else if (tree.isExpanded(path)) {
      tree.collapsePath(path);
    } else {
      tree.expandPath(path);
    }
  }

  /** Titles wrap, so their heights follow the width. */
  private void widened() {
    if (tree.getUI() instanceof BasicTreeUI ui) {
      ui.setLeftChildIndent(ui.getLeftChildIndent());
    }
  }

  private void selected(TreeSelectionEvent e) {
    if (!refreshing && e.isAddedPath() && nodeOf(e.getPath()) instanceof Contents.Leaf leaf) {
      model.open(leaf.id());
    }
  }

  private static Object nodeOf(TreePath path) {
    return ((DefaultMutableTreeNode) path.getLastPathComponent()).getUserObject();
  }

  private void refresh() {
    refreshing = true;
    List<Contents.Node> contents = model.contents();
    if (!contents.equals(shown)) {
      fill(contents);
    }
    mark();
    int count = model.problems().size();
    problems.setVisible(count > 0);
    problems.setText(CountWords.of(count, "problem") + " in the files");
    refreshing = false;
  }

  private void fill(List<Contents.Node> contents) {
    Set<String> open = openGroups();
    shown = contents;
    DefaultMutableTreeNode root = new DefaultMutableTreeNode();
    contents.forEach(node -> root.add(branch(node)));
    tree.setModel(new DefaultTreeModel(root));
    if (model.filter().isBlank()) {
      reopen(root, open);
    } else {
      for (int row = 0; row < tree.getRowCount() && tree.getRowCount() < 400; row++) {
        tree.expandRow(row);
      }
    }
  }

  private static DefaultMutableTreeNode branch(Contents.Node node) {
    DefaultMutableTreeNode branch = new DefaultMutableTreeNode(node);
    if (node instanceof Contents.Group group) {
      group.nodes().forEach(child -> branch.add(branch(child)));
    }
    return branch;
  }

  private Set<String> openGroups() {
    Set<String> open = new HashSet<>();
    Enumeration<TreePath> paths =
        tree.getExpandedDescendants(new TreePath(tree.getModel().getRoot()));
    while (paths != null && paths.hasMoreElements()) {
      open.add(key(paths.nextElement()));
    }
    return open;
  }

  private static String key(TreePath path) {
    List<String> titles = new ArrayList<>();
    for (Object part : path.getPath()) {
      Object node = ((DefaultMutableTreeNode) part).getUserObject();
      titles.add(node instanceof Contents.Node named ? named.title() : "");
    }
    return String.join("/", titles);
  }

  private void reopen(DefaultMutableTreeNode root, Set<String> open) {
    Enumeration<?> all = root.preorderEnumeration();
    while (all.hasMoreElements()) {
      TreePath path = new TreePath(((DefaultMutableTreeNode) all.nextElement()).getPath());
      if (open.contains(key(path))) {
        tree.expandPath(path);
      }
    }
  }

  /** Marks the page that is read. */
  private void mark() {
    Optional<String> id = model.problemsShown() ? Optional.empty() : model.page().map(p -> p.id());
    Optional<TreePath> path = id.flatMap(this::pathOf);
    if (path.isEmpty()) {
      tree.clearSelection();
    } else if (!path.get().equals(tree.getSelectionPath())) {
      tree.setSelectionPath(path.get());
      scrollTo(path.get());
    }
  }

  /** Scrolls up or down and never aside, so that headings are not cut off. */
  private void scrollTo(TreePath path) {
    Rectangle row = tree.getPathBounds(path);
    if (row != null) {
      tree.scrollRectToVisible(new Rectangle(0, row.y, 1, row.height));
    }
  }

  private Optional<TreePath> pathOf(String id) {
    Enumeration<?> all = ((DefaultMutableTreeNode) tree.getModel().getRoot()).preorderEnumeration();
    while (all.hasMoreElements()) {
      DefaultMutableTreeNode node = (DefaultMutableTreeNode) all.nextElement();
      if (node.getUserObject() instanceof Contents.Leaf leaf && leaf.id().equals(id)) {
        return Optional.of(new TreePath(node.getPath()));
      }
    }
    return Optional.empty();
  }
}
