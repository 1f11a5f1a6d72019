package limberboard.library.body;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/**
 * Where the target of a link stands in a body, so that it can be written anew in its place. For a
 * link whose target stands elsewhere under a label, that is where the label is explained.
 *
 * @param target the target as Markdown reads it
 * @param from where its letters begin in the body
 * @param to where they end
 * @param line its line in the body, from 0
 */
public record LinkPlace(String target, int from, int to, int line) {

  /** All targets of a body's links; those that cannot be found letter by letter are left out. */
  public static List<LinkPlace> of(String body) {
    List<LinkPlace> places = new ArrayList<>();
    for (Iterator<Node> nodes = NodeWalk.below(Markdown.parse(body)); nodes.hasNext(); ) {
      Node node = nodes.next();
      if (node instanceof Link link) {
        place(body, node, link.getDestination(), "](", places);
      } else if (node instanceof LinkReferenceDefinition label) {
        place(body, node, label.getDestination(), "]:", places);
      }
    }
    return places;
  }

  private static void place(
      String body, Node node, String target, String before, List<LinkPlace> places) {
    List<SourceSpan> spans = node.getSourceSpans();
    if (spans.isEmpty() || target == null || target.isEmpty()) {
      return;
    }
    SourceSpan last = spans.get(spans.size() - 1);
    int begin = textEnd(node, spans.get(0).getInputIndex());
    int end = Math.min(body.length(), last.getInputIndex() + last.getLength());
    int mark = body.indexOf(before, begin);
    int from = mark < 0 ? -1 : body.indexOf(target, mark + before.length());
    if (from >= 0 && from + target.length() <= end) {
      int line = (int) body.substring(0, from).chars().filter(c -> c == '\n').count();
      places.add(new LinkPlace(target, from, from + target.length(), line));
    }
  }

  /** Where a link's own text ends, in which brackets may stand. */
  private static int textEnd(Node node, int start) {
    Node last = node.getLastChild();
    if (last == null || last.getSourceSpans().isEmpty()) {
      return start;
    }
    SourceSpan span = last.getSourceSpans().get(last.getSourceSpans().size() - 1);
    return span.getInputIndex() + span.getLength();
  }
}
