package limberboard.letters.mail;

import java.util.Locale;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;

/**
 * The words of an HTML letter. Nothing of it runs or is loaded: scripts, styles, forms and pictures
 * are dropped, addresses of links too; quoted blocks begin with {@code >} as in plain text.
 */
final class HtmlText {
  private static final Set<String> SILENT =
      Set.of("script", "style", "head", "title", "noscript", "template", "object", "svg", "math");
  private static final Set<String> BLOCKS =
      Set.of(
          "p",
          "div",
          "li",
          "tr",
          "table",
          "ul",
          "ol",
          "h1",
          "h2",
          "h3",
          "h4",
          "h5",
          "h6",
          "pre",
          "blockquote",
          "section",
          "article",
          "header",
          "footer",
          "hr",
          "dl",
          "dt",
          "dd",
          "address");

  /** What a mail program would not show: nobody meant it to be read. */
  private static final String UNSEEN =
      "[hidden], [style~=(?i)display\\s*:\\s*none], [style~=(?i)visibility\\s*:\\s*hidden],"
          + " [style~=(?i)font-size\\s*:\\s*0(px|pt|em|%)?\\s*(;|$)]";

  private HtmlText() {}

  /**
   * What was read.
   *
   * @param text the words, in lines
   * @param pictures pictures that would have to be fetched from elsewhere, and were not
   */
  record Words(String text, int pictures) {}

  static Words of(String html) {
    Document document = Jsoup.parse(html);
    document.select(String.join(",", SILENT)).remove();
    document.select(UNSEEN).remove();
    int pictures = 0;
    for (Element picture : document.select("img[src]")) {
      String from = picture.attr("src").strip().toLowerCase(Locale.ROOT);
      pictures += from.startsWith("cid:") || from.startsWith("data:") ? 0 : 1;
    }
    Lines lines = new Lines();
    document.body().traverse(lines);
    return new Words(lines.text(), pictures);
  }

  /** Gathers lines; iterative, so that no depth of nesting matters. */
  private static final class Lines implements NodeVisitor {
    private final StringBuilder out = new StringBuilder();
    private final StringBuilder line = new StringBuilder();
    private int depth;

    @Override
    public void head(Node node, int level) {
      if (node instanceof TextNode text) {
        words(text.getWholeText());
      } else if (node.nodeName().equals("br")) {
        end(true);
      } else if (BLOCKS.contains(node.nodeName())) {
        end(false);
        depth += node.nodeName().equals("blockquote") ? 1 : 0;
        line.append(node.nodeName().equals("li") ? "- " : "");
      } else if (node.nodeName().equals("td") || node.nodeName().equals("th")) {
        words(" ");
      }
    }

    @Override
    public void tail(Node node, int level) {
      if (BLOCKS.contains(node.nodeName())) {
        end(false);
        depth -= node.nodeName().equals("blockquote") ? 1 : 0;
        if (node.nodeName().equals("p") || node.nodeName().equals("blockquote")) {
          end(true);
        }
      }
    }

    private void words(String text) {
      for (int i = 0; i < text.length(); i++) {
        char c = text.charAt(i);
        boolean blank = Character.isWhitespace(c) || c == '\u00A0';
        if (!blank) {
          line.append(c);
        } else if (!line.isEmpty() && line.charAt(line.length() - 1) != ' ') {
          line.append(' ');
        }
      }
    }

    private void end(boolean also) {
      if (!line.isEmpty() || also) {
        out.append(">".repeat(Math.max(0, depth)))
            .append(depth > 0 ? " " : "")
            .append(line.toString().stripTrailing())
            .append('\n');
        line.setLength(0);
      }
    }

    String text() {
      end(false);
      return out.toString();
    }
  }
}
