package limberboard.print;

import org.commonmark.node.Block;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** The words of a node without any marks; walks without recursion, however deep it is nested. */
final class PlainWords {
  private PlainWords() {}

  static String of(Node root) {
    StringBuilder words = new StringBuilder();
    Node node = root;
    while (node != null) {
      append(node, words);
      if (node.getFirstChild() != null) {
        node = node.getFirstChild();
        continue;
      }
      while (node != root && node.getNext() == null) {
        node = node.getParent();
      }
      node = node == root ? null : node.getNext();
    }
    return words.toString();
  }

  private static void append(Node node, StringBuilder words) {
    if (node instanceof Text text) {
      words.append(text.getLiteral());
    } else if (node instanceof Code code) {
      words.append(code.getLiteral());
    } else if (node instanceof HtmlInline html) {
      words.append(html.getLiteral());
    } else if (node instanceof HtmlBlock html) {
      words.append(html.getLiteral());
    } else if (node instanceof FencedCodeBlock code) {
      words.append(code.getLiteral());
    } else if (node instanceof IndentedCodeBlock code) {
      words.append(code.getLiteral());
    } else if (node instanceof SoftLineBreak
        || node instanceof HardLineBreak
        || node instanceof Block && !words.isEmpty()) {
      words.append(' ');
    }
  }
}
