package limberboard.library.body;

import java.util.Iterator;
import java.util.NoSuchElementException;
import org.commonmark.node.Node;

/** Walks the nodes of a document in its order, without recursion, however deep they are nested. */
final class NodeWalk implements Iterator<Node> {
  private final Node root;
  private Node next;

  private NodeWalk(Node root) {
    this.root = root;
    this.next = root.getFirstChild();
  }

  /** All nodes below one, which is not among them. */
  static Iterator<Node> below(Node root) {
    return new NodeWalk(root);
  }

  @Override
  public boolean hasNext() {
    return next != null;
  }

  @Override
  public Node next() {
    if (next == null) {
      throw new NoSuchElementException();
    }
    Node found = next;
    next = after(found);
    return found;
  }

  private Node after(Node node) {
    if (node.getFirstChild() != null) {
      return node.getFirstChild();
    }
    Node at = node;
    while (at != root && at.getNext() == null) {
      at = at.getParent();
    }
    return at == root ? null : at.getNext();
  }
}
