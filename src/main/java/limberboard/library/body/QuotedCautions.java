package limberboard.library.body;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;

/** The cautions that a page's own text links to, each with the boats that its section is for. */
public final class QuotedCautions {
  private static final String FOLDER = "cautions/";
  private static final String ENDING = ".md";

  private QuotedCautions() {}

  /**
   * A caution named in the text.
   *
   * @param caution what the link names: a caution's id, if there is such a page
   * @param only what must hold for the sections around it to be shown; all of them must
   */
  public record Quoted(String caution, List<Condition> only) {
    /** Copies the list. */
    public Quoted {
      only = List.copyOf(only);
    }
  }

  /** Those of a page, in the order of its text. */
  public static List<Quoted> in(Page<?> page) {
    return page.body().contains(FOLDER) ? scanned(page) : List.of();
  }

  private static List<Quoted> scanned(Page<?> page) {
    List<Quoted> quoted = new ArrayList<>();
    Deque<Section> around = new ArrayDeque<>();
    Node document = Markdown.parse(page.body());
    for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
      if (block instanceof Heading heading) {
        around.removeIf(section -> section.level() >= heading.getLevel());
        Condition only =
            page.head().onlyFor().getOrDefault(PlainWords.of(heading), Condition.ALWAYS);
        around.add(new Section(heading.getLevel(), only));
      }
      List<Condition> only = around.stream().map(Section::only).toList();
      for (Iterator<Node> nodes = NodeWalk.below(block); nodes.hasNext(); ) {
        if (nodes.next() instanceof Link link && isCaution(link.getDestination())) {
          quoted.add(new Quoted(id(link.getDestination()), only));
        }
      }
    }
    return quoted;
  }

  private static boolean isCaution(String target) {
    String file = file(target);
    return target.contains(FOLDER) && file.endsWith(ENDING);
  }

  private static String id(String target) {
    String file = file(target);
    return file.substring(0, file.length() - ENDING.length());
  }

  private static String file(String target) {
    String path = target.split("#", 2)[0];
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** A heading's level and the boats that what stands below it is for. */
  private record Section(int level, Condition only) {}
}
