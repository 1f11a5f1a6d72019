package limberboard.library;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * What a page's Markdown refers to.
 *
 * @param links targets of links
 * @param pictures targets of pictures
 * @param headings heading texts
 * @param html raw HTML
 */
record BodyScan(List<Spot> links, List<Spot> pictures, List<Spot> headings, List<Spot> html) {

  /**
   * Something in the body.
   *
   * @param text the target, heading or HTML
   * @param line the file's line, from 1
   */
  record Spot(String text, int line) {}

  /**
   * Scans a body.
   *
   * @param body the Markdown
   * @param firstLine the file's line on which it begins
   */
  static BodyScan of(String body, int firstLine) {
    Parser parser =
        Parser.builder()
            .extensions(List.of(TablesExtension.create()))
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .maxOpenBlockParsers(100)
            .build();
    Collector collector = new Collector(firstLine);
    parser.parse(body).accept(collector);
    return new BodyScan(collector.links, collector.pictures, collector.headings, collector.html);
  }

  private static final class Collector extends AbstractVisitor {
    private final int firstLine;
    private final List<Spot> links = new ArrayList<>();
    private final List<Spot> pictures = new ArrayList<>();
    private final List<Spot> headings = new ArrayList<>();
    private final List<Spot> html = new ArrayList<>();

    Collector(int firstLine) {
      this.firstLine = firstLine;
    }

    @Override
    public void visit(Link link) {
      links.add(new Spot(link.getDestination(), line(link)));
      visitChildren(link);
    }

    @Override
    public void visit(Image image) {
      pictures.add(new Spot(image.getDestination(), line(image)));
      visitChildren(image);
    }

    @Override
    public void visit(Heading heading) {
      String text = TextContentRenderer.builder().build().render(heading).strip();
      headings.add(new Spot(text, line(heading)));
      visitChildren(heading);
    }

    @Override
    public void visit(HtmlBlock block) {
      html.add(new Spot(block.getLiteral(), line(block)));
    }

    @Override
    public void visit(HtmlInline inline) {
      html.add(new Spot(inline.getLiteral(), line(inline)));
    }

    private int line(Node node) {
      for (Node at = node; at != null; at = at.getParent()) {
        List<SourceSpan> spans = at.getSourceSpans();
        if (!spans.isEmpty()) {
          return firstLine + spans.get(0).getLineIndex();
        }
      }
      return firstLine;
    }
  }
}
