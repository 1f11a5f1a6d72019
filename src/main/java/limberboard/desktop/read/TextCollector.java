package limberboard.desktop.read;

import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.read.LaidOutPassage.Cell;
import limberboard.desktop.read.LaidOutPassage.Drawn;
import limberboard.desktop.read.LaidOutPassage.Heading;
import limberboard.desktop.read.LaidOutPassage.Item;
import limberboard.desktop.read.LaidOutPassage.Paragraph;
import limberboard.desktop.read.LaidOutPassage.Role;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.parser.FSRGBColor;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.LineBox;
import org.xhtmlrenderer.swing.AWTFSFont;

/** Reads the text off a page that has been laid out. For one page, on one thread. */
final class TextCollector {
  private final LayoutContext context;
  private final StringBuilder text = new StringBuilder();
  private final List<LaidOutPassage> passages = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Map<Element, Integer> numbers = new HashMap<>();
  private Optional<Box> container = Optional.empty();
  private Role role = new Paragraph();
  private List<Run> runs = new ArrayList<>();
  private Rectangle room = new Rectangle();
  private int start;
  private String gap = "";
  private Optional<Element> linked = Optional.empty();

  private TextCollector(LayoutContext context) {
    this.context = context;
  }

  /** The text of everything in a box. */
  static LaidOutText of(Box root, LayoutContext context) {
    TextCollector collector = new TextCollector(context);
    collector.box(root);
    collector.finish();
    return new LaidOutText(collector.text.toString(), collector.passages, collector.links);
  }

  private void box(Box box) {
    if (box instanceof LineBox line) {
      line(line);
    } else if (box instanceof BlockBox block && block.isReplaced()) {
      picture(block);
    } else {
      for (Box child : List.copyOf(box.getChildren())) {
        box(child);
      }
    }
  }

  private void picture(BlockBox box) {
    Element element = box.getElement();
    if (element != null && element.getNodeName().equals("img")) {
      finish();
      container = Optional.empty();
      Rectangle place =
          new Rectangle(box.getAbsX(), box.getAbsY(), box.getWidth(), box.getHeight());
      passages.add(
          new LaidOutPassage(
              new Drawn(element.getAttribute("alt")),
              text.length(),
              text.length(),
              List.of(),
              place));
    }
  }

  private void line(LineBox line) {
    Box parent = line.getParent();
    if (container.filter(now -> now == parent).isEmpty()) {
      finish();
      begin(parent);
    }
    for (Box child : List.copyOf(line.getChildren())) {
      inline(child);
    }
  }

  private void inline(Box box) {
    if (box instanceof InlineLayoutBox inline) {
      for (Object child : inline.getInlineChildren()) {
        if (child instanceof InlineText found) {
          add(inline, found);
        } else if (child instanceof Box nested) {
          inline(nested);
        }
      }
    } else if (box instanceof BlockBox block) {
      box(block);
    }
  }

  private void begin(Box parent) {
    container = Optional.of(parent);
    role = Roles.of(parent, this::number);
    runs = new ArrayList<>();
    room = new Rectangle(parent.getAbsX(), parent.getAbsY(), parent.getWidth(), parent.getHeight());
    gap = "";
    start = -1;
  }

  /** A number for each list, table, row and cell, in the order in which they are met. */
  private int number(Element element) {
    return numbers.computeIfAbsent(element, key -> numbers.size() + 1);
  }

  private void add(InlineLayoutBox parent, InlineText found) {
    String letters = found.getSubstring();
    if (!letters.isBlank() || start >= 0 && !letters.isEmpty()) {
      if (start < 0) {
        separate();
        start = text.length();
      }
      text.append(gap);
      Rectangle box =
          new Rectangle(
              parent.getAbsX() + found.getX(),
              parent.getAbsY(),
              found.getWidth(),
              parent.getHeight());
      runs.add(
          new Run(
              text.length(),
              letters,
              box,
              parent.getAbsY() + parent.getBaseline(),
              font(parent),
              ink(parent),
              Roles.isIn(parent.getElement(), "strong"),
              Roles.isIn(parent.getElement(), "em")));
      text.append(letters);
      link(parent, letters.length());
      gap = "";
    }
    gap = gapAfter(found, letters);
  }

  /** A space or line break that was taken away where the line ends. */
  private static String gapAfter(InlineText found, String letters) {
    String all = found.getMasterText();
    if (found.getEnd() < all.length() && all.charAt(found.getEnd()) == '\n') {
      return "\n";
    }
    boolean space = found.getTextExportText().endsWith(" ") && !letters.endsWith(" ");
    return space ? " " : "";
  }

  private Font font(InlineLayoutBox box) {
    return ((AWTFSFont) box.getStyle().getFSFont(context)).getAWTFont();
  }

  private static Color ink(InlineLayoutBox box) {
    return box.getStyle().getColor() instanceof FSRGBColor colour
        ? new Color(colour.getRed(), colour.getGreen(), colour.getBlue())
        : Color.BLACK;
  }

  private void link(InlineLayoutBox box, int letters) {
    Optional<Element> now = Roles.around(box.getElement(), "a");
    int end = text.length();
    now.ifPresent(
        element -> {
          if (linked.filter(before -> before == element).isPresent()) {
            Link before = links.remove(links.size() - 1);
            links.add(new Link(before.address(), before.start(), end));
          } else {
            links.add(new Link(element.getAttribute("href"), end - letters, end));
          }
        });
    linked = now;
  }

  /** What stands between the passage before and the one that begins. */
  private void separate() {
    Optional<Role> before =
        passages.stream()
            .map(LaidOutPassage::role)
            .filter(other -> !(other instanceof Drawn))
            .reduce((first, second) -> second);
    before.ifPresent(other -> text.append(between(other, role)));
    if (role instanceof Item item && item.first()) {
      text.append("  ".repeat(item.depth() - 1)).append(item.mark());
    }
  }

  private static String between(Role before, Role next) {
    if (before instanceof Cell one && next instanceof Cell other) {
      if (one.row() == other.row()) {
        return one.cell() == other.cell() ? " " : "\t";
      }
      return one.table() == other.table() ? "\n" : "\n\n";
    }
    boolean sameList = before instanceof Item && next instanceof Item;
    boolean close = before instanceof Heading && !(next instanceof Heading);
    return sameList || close ? "\n" : "\n\n";
  }

  private void finish() {
    if (container.isPresent() && start >= 0) {
      passages.add(new LaidOutPassage(role, start, text.length(), runs, room));
    }
    container = Optional.empty();
    linked = Optional.empty();
    start = -1;
  }
}
