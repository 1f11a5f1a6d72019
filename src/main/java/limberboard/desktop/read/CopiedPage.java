package limberboard.desktop.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.LaidOutPassage.Cell;
import limberboard.desktop.read.LaidOutPassage.Heading;
import limberboard.desktop.read.LaidOutPassage.Item;
import limberboard.desktop.read.LaidOutPassage.Role;
import limberboard.desktop.read.LaidOutPassage.Verbatim;
import limberboard.desktop.read.LaidOutText.Part;

/** Writes a part of a page for other programs. For one part, on one thread. */
final class CopiedPage {
  private final StringBuilder html = new StringBuilder();
  private final Deque<String> lists = new ArrayDeque<>();
  private Optional<Cell> cell = Optional.empty();

  private CopiedPage() {}

  /** A part of a page, plain and as HTML. */
  static Copied of(LaidOutText page, Part part) {
    CopiedPage writer = new CopiedPage();
    for (LaidOutPassage passage : page.passages()) {
      if (passage.start() < part.end() && passage.end() > part.start()) {
        writer.passage(passage, part);
      }
    }
    writer.endLists(0);
    writer.endTable();
    return new Copied(page.plain(part), Copied.document(writer.html.toString()));
  }

  private void passage(LaidOutPassage passage, Part part) {
    Role role = passage.role();
    if (!(role instanceof Item)) {
      endLists(0);
    }
    if (!(role instanceof Cell)) {
      endTable();
    }
    if (role instanceof Item item) {
      item(item);
      text(passage, part);
    } else if (role instanceof Cell found) {
      cell(found);
      text(passage, part);
    } else {
      String element = element(role);
      html.append('<').append(element).append('>');
      text(passage, part);
      html.append("</").append(element).append('>');
    }
  }

  private static String element(Role role) {
    if (role instanceof Heading heading) {
      return "h" + heading.level();
    }
    return role instanceof Verbatim ? "pre" : "p";
  }

  /** Ends deeper lists, begins missing ones, and begins the item; text of an item may go on. */
  private void item(Item item) {
    if (!item.first() && lists.size() == item.depth()) {
      html.append("<br>");
      return;
    }
    endLists(item.depth());
    if (lists.size() == item.depth()) {
      html.append("</li>");
    }
    while (lists.size() < item.depth()) {
      String list = item.number() > 0 ? "ol" : "ul";
      lists.push(list);
      html.append('<').append(list);
      html.append(item.number() > 1 ? " start=\"" + item.number() + "\">" : ">");
    }
    html.append("<li>");
  }

  private void endLists(int depth) {
    while (lists.size() > depth) {
      html.append("</li></").append(lists.pop()).append('>');
    }
  }

  private void cell(Cell now) {
    Optional<Cell> before = cell;
    if (before.filter(old -> old.table() == now.table()).isEmpty()) {
      endTable();
      html.append("<table><tr>");
    } else if (before.get().cell() == now.cell()) {
      html.append("<br>");
      return;
    } else {
      endCell();
      html.append(before.get().row() == now.row() ? "" : "</tr><tr>");
    }
    cell = Optional.of(now);
    html.append(now.head() ? "<th>" : "<td>");
  }

  private void endCell() {
    cell.ifPresent(now -> html.append(now.head() ? "</th>" : "</td>"));
  }

  private void endTable() {
    endCell();
    html.append(cell.isPresent() ? "</tr></table>" : "");
    cell = Optional.empty();
  }

  private void text(LaidOutPassage passage, Part part) {
    int at = Math.max(passage.start(), part.start());
    for (Run run : passage.runs()) {
      int from = Math.max(run.start(), part.start());
      int to = Math.min(run.end(), part.end());
      if (from < to) {
        html.append(from > at ? " " : "");
        run(run, run.text().substring(from - run.start(), to - run.start()));
        at = to;
      }
    }
  }

  private void run(Run run, String letters) {
    String words = Copied.escaped(letters).replace("\n", "<br>");
    words = run.stressed() ? "<em>" + words + "</em>" : words;
    html.append(run.strong() ? "<strong>" + words + "</strong>" : words);
  }
}
