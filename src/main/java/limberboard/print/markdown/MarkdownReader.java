package limberboard.print.markdown;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.body.Markdown;
import limberboard.library.body.PlainWords;
import limberboard.print.page.Block;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.ThematicBreak;

/**
 * Reads CommonMark with tables into blocks. HTML is kept as text. What is nested more than {@value
 * #DEEPEST} deep is kept as text too, so that no input can exhaust the stack of this or any later
 * step. Immutable.
 */
public final class MarkdownReader {
  static final int DEEPEST = 10;
  private static final int LEAST_HEADING = 2;

  private final InlineReader inlines;
  private final TableReader tables;

  /** A reader that resolves links and pictures with the targets. */
  public MarkdownReader(LinkTargets targets) {
    this.inlines = new InlineReader(targets);
    this.tables = new TableReader(inlines);
  }

  /**
   * A block, with what a cutter has to know about a heading.
   *
   * @param block the block
   * @param headingLevel its level as written, 1 to 6; 0 when it is no heading
   * @param headingText its text without marks; empty when it is no heading
   */
  public record Read(Block block, int headingLevel, String headingText) {}

  /** Reads a page's body, block by block. */
  public List<Read> read(String markdown) {
    List<Read> blocks = new ArrayList<>();
    for (Node node = Markdown.parse(markdown).getFirstChild();
        node != null;
        node = node.getNext()) {
      int level = node instanceof Heading heading ? heading.getLevel() : 0;
      String text = level > 0 ? PlainWords.of(node) : "";
      for (Block block : block(node, 1)) {
        blocks.add(new Read(block, level, text));
      }
    }
    return blocks;
  }

  private List<Block> children(Node parent, int depth) {
    List<Block> blocks = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      blocks.addAll(block(node, depth));
    }
    return blocks;
  }

  /** The block for a node; none for what is never shown, such as link definitions. */
  private List<Block> block(Node node, int depth) {
    if (node instanceof Heading heading) {
      int level = Math.max(LEAST_HEADING, heading.getLevel());
      return List.of(new Block.Heading(level, inlines.children(node, depth)));
    } else if (node instanceof Paragraph) {
      return List.of(new Block.Paragraph(inlines.children(node, depth)));
    } else if (node instanceof FencedCodeBlock code) {
      return List.of(new Block.Verbatim(code.getLiteral()));
    } else if (node instanceof IndentedCodeBlock code) {
      return List.of(new Block.Verbatim(code.getLiteral()));
    } else if (node instanceof HtmlBlock html) {
      return List.of(new Block.Verbatim(html.getLiteral()));
    } else if (node instanceof ThematicBreak) {
      return List.of(new Block.Rule());
    } else if (depth >= DEEPEST) {
      String words = PlainWords.of(node);
      return words.isEmpty() ? List.of() : List.of(Block.Paragraph.of(words));
    } else if (node instanceof BlockQuote) {
      return List.of(new Block.Quote(children(node, depth + 1)));
    } else if (node instanceof BulletList list) {
      return List.of(new Block.Items(false, 1, list.isTight(), items(list, depth + 1)));
    } else if (node instanceof OrderedList list) {
      return List.of(new Block.Items(true, number(list), list.isTight(), items(list, depth + 1)));
    } else if (node instanceof TableBlock table) {
      return List.of(tables.table(table, depth));
    }
    return List.of();
  }

  private static int number(OrderedList list) {
    Integer number = list.getMarkerStartNumber();
    return number == null ? 1 : number;
  }

  private List<List<Block>> items(ListBlock list, int depth) {
    List<List<Block>> items = new ArrayList<>();
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      items.add(children(item, depth));
    }
    return items;
  }
}
