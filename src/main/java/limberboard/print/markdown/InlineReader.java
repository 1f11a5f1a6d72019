package limberboard.print.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.body.PlainWords;
import limberboard.print.page.Inline;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Reads the text within a block. Immutable. */
public final class InlineReader {
  private final LinkTargets targets;

  InlineReader(LinkTargets targets) {
    this.targets = targets;
  }

  /** The runs of text below a node that is itself nested so deep. */
  List<Inline> children(Node parent, int depth) {
    List<Inline> runs = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      add(node, depth, runs);
    }
    return runs;
  }

  private void add(Node node, int depth, List<Inline> runs) {
    if (node instanceof Text text) {
      runs.add(new Inline.Text(text.getLiteral()));
    } else if (node instanceof Code code) {
      runs.add(new Inline.Code(code.getLiteral()));
    } else if (node instanceof HtmlInline html) {
      runs.add(new Inline.Text(html.getLiteral()));
    } else if (node instanceof SoftLineBreak) {
      runs.add(new Inline.Text(" "));
    } else if (node instanceof HardLineBreak) {
      runs.add(new Inline.LineBreak());
    } else if (node instanceof Image image) {
      runs.add(picture(image));
    } else if (depth >= MarkdownReader.DEEPEST) {
      runs.add(new Inline.Text(PlainWords.of(node)));
    } else if (node instanceof Emphasis) {
      runs.add(new Inline.Emphasis(children(node, depth + 1)));
    } else if (node instanceof StrongEmphasis) {
      runs.add(new Inline.Strong(children(node, depth + 1)));
    } else if (node instanceof Link link) {
      addLink(link, depth, runs);
    }
  }

  private Inline picture(Image image) {
    String alt = PlainWords.of(image);
    return targets
        .picture(image.getDestination())
        .<Inline>map(path -> new Inline.Picture(path, alt))
        .orElseGet(() -> new Inline.Text(notShown(alt)));
  }

  /** What stands in place of a picture that is not shown. */
  public static String notShown(String alt) {
    return notShown(alt, "");
  }

  /** The same with the reason, which begins with a semicolon or is empty. */
  public static String notShown(String alt, String why) {
    return "[picture" + (alt.isEmpty() ? "" : ": " + alt) + why + "]";
  }

  private void addLink(Link link, int depth, List<Inline> runs) {
    List<Inline> parts = children(link, depth + 1);
    String beside = targets.beside(link);
    if (!beside.isEmpty()) {
      parts.add(new Inline.Text(beside));
    }
    Optional<String> page = targets.page(link.getDestination());
    if (page.isPresent()) {
      runs.add(new Inline.PageLink(page.get(), parts));
      return;
    }
    runs.addAll(parts);
    targets
        .address(link.getDestination())
        .filter(address -> !PlainWords.of(link).contains(address))
        .ifPresent(address -> runs.add(new Inline.Text(" (" + address + ")")));
  }
}
