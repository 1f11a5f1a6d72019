package limberboard.desktop.read;

import java.util.Optional;
import java.util.function.ToIntFunction;
import limberboard.desktop.read.LaidOutPassage.Cell;
import limberboard.desktop.read.LaidOutPassage.Heading;
import limberboard.desktop.read.LaidOutPassage.Item;
import limberboard.desktop.read.LaidOutPassage.Paragraph;
import limberboard.desktop.read.LaidOutPassage.Role;
import limberboard.desktop.read.LaidOutPassage.Verbatim;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;

/** What boxes of text are on their page, told from the elements around them. */
final class Roles {
  private Roles() {}

  /**
   * The role of the text in a box.
   *
   * @param box what its lines stand in
   * @param number gives each list, table, row and cell a number
   */
  static Role of(Box box, ToIntFunction<Element> number) {
    Optional<Element> own = element(box);
    for (Optional<Element> at = own; at.isPresent(); at = parent(at.get())) {
      Element element = at.get();
      switch (element.getNodeName()) {
        case "h1", "h2", "h3", "h4", "h5", "h6" -> {
          return new Heading(element.getNodeName().charAt(1) - '0');
        }
        case "pre" -> {
          return new Verbatim();
        }
        case "li" -> {
          return item(box, element, number);
        }
        case "td", "th" -> {
          return cell(element, number);
        }
        default -> {}
      }
    }
    return new Paragraph();
  }

  private static Role item(Box box, Element item, ToIntFunction<Element> number) {
    Optional<Element> list = parent(item);
    boolean numbered = list.filter(found -> found.getNodeName().equals("ol")).isPresent();
    int depth = 0;
    for (Optional<Element> at = list; at.isPresent(); at = parent(at.get())) {
      depth += at.get().getNodeName().matches("ol|ul") ? 1 : 0;
    }
    int counter = numbered ? Math.max(1, counter(box, item)) : 0;
    return new Item(
        list.map(number::applyAsInt).orElse(0), Math.max(1, depth), counter, begins(box, item));
  }

  /** The number that the layout has given the item. */
  private static int counter(Box box, Element item) {
    for (Box at = box; at != null; at = at.getParent()) {
      if (at instanceof BlockBox block && !block.isAnonymous() && block.getElement() == item) {
        return block.getListCounter();
      }
    }
    return 0;
  }

  /** Whether a box is the first with text in an item. */
  private static boolean begins(Box box, Element item) {
    for (Box at = box; at != null; at = at.getParent()) {
      boolean own = at instanceof BlockBox block && !block.isAnonymous();
      if (own && at.getElement() == item) {
        return true;
      }
      if (at.getParent() == null || at.getParent().getChild(0) != at) {
        return false;
      }
    }
    return false;
  }

  private static Role cell(Element cell, ToIntFunction<Element> number) {
    Optional<Element> row = around(cell, "tr");
    Optional<Element> table = around(cell, "table");
    for (Optional<Element> at = table; at.isPresent(); ) {
      table = at;
      at = parent(at.get()).flatMap(up -> around(up, "table"));
    }
    return new Cell(
        table.map(number::applyAsInt).orElse(0),
        row.map(number::applyAsInt).orElse(0),
        number.applyAsInt(cell),
        cell.getNodeName().equals("th"));
  }

  /** Whether an element is, or stands in, one of this name. */
  static boolean isIn(Element element, String name) {
    return around(element, name).isPresent();
  }

  /** The element of this name that an element is or stands in; the innermost. */
  static Optional<Element> around(Element element, String name) {
    Optional<Element> at = Optional.ofNullable(element);
    while (at.isPresent() && !at.get().getNodeName().equals(name)) {
      at = parent(at.get());
    }
    return at;
  }

  private static Optional<Element> element(Box box) {
    for (Box at = box; at != null; at = at.getParent()) {
      if (at.getElement() != null) {
        return Optional.of(at.getElement());
      }
    }
    return Optional.empty();
  }

  private static Optional<Element> parent(Element element) {
    Node up = element.getParentNode();
    return up instanceof Element found ? Optional.of(found) : Optional.empty();
  }
}
