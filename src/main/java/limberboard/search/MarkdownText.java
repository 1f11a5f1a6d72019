package limberboard.search;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.body.Markdown;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Block;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/**
 * The plain text of a page's Markdown.
 *
 * @param headings its headings
 * @param blocks its paragraphs, list items, table rows and code, in order, one line each
 */
record MarkdownText(List<String> headings, List<String> blocks) {
  /** Copies the lists. */
  MarkdownText {
    headings = List.copyOf(headings);
    blocks = List.copyOf(blocks);
  }

  /** Reads Markdown. Any text is Markdown. */
  static MarkdownText of(String markdown) {
    return new Walk().over(Markdown.parse(markdown));
  }

  /** Goes through a document without recursion, which a deeply nested one would exhaust. */
  private static final class Walk {
    private final List<String> headings = new ArrayList<>();
    private final List<String> blocks = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    MarkdownText over(Node document) {
      Node at = document;
      while (true) {
        enter(at);
        if (at.getFirstChild() != null) {
          at = at.getFirstChild();
          continue;
        }
        leave(at);
        while (at != document && at.getNext() == null) {
          at = at.getParent();
          leave(at);
        }
        if (at == document) {
          return new MarkdownText(headings, blocks);
        }
        at = at.getNext();
      }
    }

    private void enter(Node node) {
      if (node instanceof Text words) {
        text.append(words.getLiteral());
      } else if (node instanceof Code code) {
        text.append(code.getLiteral());
      } else if (node instanceof HtmlInline html) {
        text.append(html.getLiteral());
      } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
        text.append(' ');
      } else if (node instanceof FencedCodeBlock code) {
        text.append(code.getLiteral());
      } else if (node instanceof IndentedCodeBlock code) {
        text.append(code.getLiteral());
      } else if (node instanceof HtmlBlock html) {
        text.append(html.getLiteral());
      }
    }

    private void leave(Node node) {
      if (node instanceof Heading) {
        end(headings);
      } else if (node instanceof TableCell) {
        text.append(node.getNext() == null ? "" : " – ");
      } else if (node instanceof TableRow
          || node instanceof Paragraph
          || node instanceof Block && node.getFirstChild() == null) {
        end(blocks);
      }
    }

    private void end(List<String> to) {
      String line = text.toString().replaceAll("\\s+", " ").strip();
      text.setLength(0);
      if (!line.isEmpty()) {
        to.add(line);
      }
    }
  }
}
