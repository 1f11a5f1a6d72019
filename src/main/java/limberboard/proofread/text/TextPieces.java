package limberboard.proofread.text;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import limberboard.library.body.Markdown;
import limberboard.library.body.PlainWords;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;

/** Takes a page's text apart into passages, in its order. */
public final class TextPieces {
  private final Page<?> page;
  private final List<TextPiece> passages = new ArrayList<>();
  private final Deque<Section> around = new ArrayDeque<>();
  private String heading = "";

  private TextPieces(Page<?> page) {
    this.page = page;
  }

  /** The passages of a page. */
  public static List<TextPiece> of(Page<?> page) {
    TextPieces reading = new TextPieces(page);
    Node document = Markdown.parse(page.body());
    for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
      reading.block(block);
    }
    return List.copyOf(reading.passages);
  }

  /** The headings of a page, as they are called. */
  public static List<String> headings(Page<?> page) {
    List<String> headings = new ArrayList<>();
    Node document = Markdown.parse(page.body());
    for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
      if (block instanceof Heading) {
        headings.add(PlainWords.of(block));
      }
    }
    return headings;
  }

  private void block(Node block) {
    if (block instanceof Heading head) {
      heading = PlainWords.of(head);
      around.removeIf(section -> section.level() >= head.getLevel());
      Condition only = page.head().onlyFor().getOrDefault(heading, Condition.ALWAYS);
      around.add(new Section(head.getLevel(), only));
    } else if (block instanceof OrderedList list) {
      Integer first = list.getMarkerStartNumber();
      int number = first == null ? 1 : Math.max(1, first);
      for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
        add(number++, item);
      }
    } else if (block instanceof BulletList) {
      for (Node item = block.getFirstChild(); item != null; item = item.getNext()) {
        add(0, item);
      }
    } else if (block instanceof TableBlock) {
      rows(block);
    } else {
      add(0, block);
    }
  }

  private void rows(Node table) {
    table.accept(
        new AbstractVisitor() {
          @Override
          public void visit(CustomNode node) {
            if (node instanceof TableRow) {
              add(0, node);
            } else {
              visitChildren(node);
            }
          }
        });
  }

  private void add(int number, Node node) {
    String text = PlainWords.of(node);
    if (!text.isBlank()) {
      List<Condition> only = around.stream().map(Section::only).toList();
      passages.add(TextPiece.of(number, text, line(node), heading, only, links(node)));
    }
  }

  private int line(Node node) {
    return page.bodyLine()
        + (node.getSourceSpans().isEmpty() ? 0 : node.getSourceSpans().get(0).getLineIndex());
  }

  private static List<String> links(Node node) {
    List<String> links = new ArrayList<>();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Link link) {
            links.add(link.getDestination());
            visitChildren(link);
          }
        });
    return links;
  }

  /** A heading's level and the boats that what stands below it is for. */
  private record Section(int level, Condition only) {}
}
