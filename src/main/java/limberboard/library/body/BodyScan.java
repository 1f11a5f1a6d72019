package limberboard.library.body;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/**
 * What a page's Markdown refers to.
 *
 * @param links targets of links
 * @param pictures targets of pictures
 * @param headings heading texts
 * @param html raw HTML
 */
public record BodyScan(
    List<Spot> links, List<Spot> pictures, List<Spot> headings, List<Spot> html) {
  /** A scan that found nothing. */
  public static final BodyScan NOTHING = new BodyScan(List.of(), List.of(), List.of(), List.of());

  /**
   * Something in the body.
   *
   * @param text the target, heading or HTML
   * @param line the file's line, from 1
   */
  public record Spot(String text, int line) {}

  /**
   * Scans a body.
   *
   * @param document the parsed body
   * @param firstLine the file's line on which it begins
   */
  public static BodyScan of(Node document, int firstLine) {
    BodyScan scan =
        new BodyScan(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    NodeWalk.below(document).forEachRemaining(node -> scan.add(node, firstLine));
    return scan;
  }

  private void add(Node node, int firstLine) {
    int line = firstLine + lineIndex(node);
    if (node instanceof Link link) {
      links.add(new Spot(link.getDestination(), line));
    } else if (node instanceof Image image) {
      pictures.add(new Spot(image.getDestination(), line));
    } else if (node instanceof Heading) {
      headings.add(new Spot(PlainWords.of(node), line));
    } else if (node instanceof HtmlBlock block) {
      html.add(new Spot(block.getLiteral(), line));
    } else if (node instanceof HtmlInline inline) {
      html.add(new Spot(inline.getLiteral(), line));
    }
  }

  /** The line of the body, from 0, on which a node or what it stands in begins. */
  static int lineIndex(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      List<SourceSpan> spans = at.getSourceSpans();
      if (!spans.isEmpty()) {
        return spans.get(0).getLineIndex();
      }
    }
    return 0;
  }
}
