package limberboard.desktop.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import limberboard.desktop.read.LaidOutPassage.Cell;
import limberboard.desktop.read.LaidOutPassage.Drawn;
import limberboard.desktop.read.LaidOutPassage.Heading;
import limberboard.desktop.read.LaidOutPassage.Item;
import limberboard.desktop.read.LaidOutPassage.Role;
import limberboard.desktop.read.LaidOutText.Part;

/** Puts the parts of a page together for those who listen. For one page, on the event thread. */
final class AccessibleParts {
  private final PageView view;
  private final LaidOutText text;
  private final List<AccessiblePart> parts = new ArrayList<>();
  private final Deque<AccessiblePart> lists = new ArrayDeque<>();
  private Optional<AccessiblePart> item = Optional.empty();
  private Optional<AccessiblePart> table = Optional.empty();
  private int tableNumber;

  private AccessibleParts(PageView view) {
    this.view = view;
    this.text = view.text();
  }

  /** The parts of what a view shows. */
  static List<AccessiblePart> of(PageView view) {
    AccessibleParts made = new AccessibleParts(view);
    made.text.passages().forEach(made::passage);
    return List.copyOf(made.parts);
  }

  private void passage(LaidOutPassage passage) {
    Role role = passage.role();
    if (!(role instanceof Item)) {
      lists.clear();
      item = Optional.empty();
    }
    if (!(role instanceof Cell)) {
      table = Optional.empty();
    }
    if (role instanceof Heading heading) {
      top(passage, AccessibleRole.HEADER)
          .setAccessibleDescription("Heading of level " + heading.level());
    } else if (role instanceof Item found) {
      item(passage, found);
    } else if (role instanceof Cell found) {
      cell(passage, found);
    } else if (role instanceof Drawn drawn) {
      parts.add(new AccessiblePart(view, AccessibleRole.ICON, drawn.shows(), Optional.empty()));
    } else {
      top(passage, AccessibleRole.PARAGRAPH);
    }
  }

  private AccessiblePart top(LaidOutPassage passage, AccessibleRole role) {
    AccessiblePart part = part(passage, role, "");
    parts.add(part);
    return part;
  }

  private AccessiblePart part(LaidOutPassage passage, AccessibleRole role, String mark) {
    Part words = new Part(passage.start(), passage.end());
    AccessiblePart part =
        new AccessiblePart(view, role, mark + text.plain(words), Optional.of(words));
    text.links().stream()
        .filter(link -> passage.start() <= link.start() && link.end() <= passage.end())
        .forEach(link -> part.add(AccessiblePart.link(view, link)));
    return part;
  }

  private void item(LaidOutPassage passage, Item found) {
    if (!found.first() && item.isPresent()) {
      item.get().add(part(passage, AccessibleRole.PARAGRAPH, ""));
      return;
    }
    while (lists.size() > found.depth()) {
      lists.pop();
    }
    while (lists.size() < found.depth()) {
      lists.push(list());
    }
    String mark = found.number() > 0 ? found.mark() : "";
    item = Optional.of(lists.peek().add(part(passage, AccessibleRole.LIST_ITEM, mark)));
  }

  /** A list, in the item of the list around it where there is one. */
  private AccessiblePart list() {
    AccessiblePart list = new AccessiblePart(view, AccessibleRole.LIST, "List", Optional.empty());
    if (!lists.isEmpty() && item.isPresent()) {
      item.get().add(list);
    } else {
      parts.add(list);
    }
    return list;
  }

  private void cell(LaidOutPassage passage, Cell cell) {
    if (table.isEmpty() || tableNumber != cell.table()) {
      tableNumber = cell.table();
      table =
          Optional.of(new AccessiblePart(view, AccessibleRole.TABLE, "Table", Optional.empty()));
      parts.add(table.get());
    }
    AccessibleRole role = cell.head() ? AccessibleRole.COLUMN_HEADER : AccessibleRole.LABEL;
    table.get().add(part(passage, role, ""));
  }
}
