package limberboard.library.body;

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

/**
 * The words of a piece of Markdown without any marks: what a heading is called by, whoever asks.
 */
public final class PlainWords {
  private PlainWords() {}

  /** The words below a node, however deep they are nested. */
  public static String of(Node root) {
    StringBuilder words = new StringBuilder();
    NodeWalk.below(root).forEachRemaining(node -> append(node, words));
    return words.toString().strip();
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
    } else if (isGap(node) && !words.isEmpty()) {
      words.append(' ');
    }
  }

  private static boolean isGap(Node node) {
    return node instanceof SoftLineBreak || node instanceof HardLineBreak || node instanceof Block;
  }
}
