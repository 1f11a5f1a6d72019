package limberboard.letters.answer;

import java.util.List;
import limberboard.letters.answer.DraftLine.Kind;
import limberboard.print.drawing.Markup;

/** Lines of a draft as text and as HTML. */
final class DraftText {
  private static final String DOT = "- ";

  private DraftText() {}

  /** As plain text: a paragraph in one line, with a blank line between them. */
  static String of(List<DraftLine> lines) {
    StringBuilder text = new StringBuilder();
    Kind before = Kind.HEADING;
    for (DraftLine line : lines) {
      boolean close = line.kind() == Kind.ITEM && before != Kind.PARAGRAPH;
      if (text.length() > 0 && !close) {
        text.append('\n');
      }
      text.append(line.kind() == Kind.ITEM ? DOT : "").append(line.text()).append('\n');
      before = line.kind();
    }
    return text.toString();
  }

  /** As a piece of HTML, without anything that is loaded from elsewhere. */
  static String html(DraftBlock block) {
    Markup html = new Markup();
    block
        .edit()
        .ifPresentOrElse(edit -> edited(edit.text(), html), () -> written(block.written(), html));
    return html.toString();
  }

  private static void written(List<DraftLine> lines, Markup html) {
    boolean listed = false;
    for (DraftLine line : lines) {
      boolean item = line.kind() == Kind.ITEM;
      if (item && !listed) {
        html.open("ul").line();
      } else if (listed && !item) {
        html.close("ul").line();
      }
      listed = item;
      switch (line.kind()) {
        case HEADING -> html.open("p").plainElement("b", line.text()).close("p").line();
        case PARAGRAPH -> html.plainElement("p", line.text()).line();
        case ITEM -> html.plainElement("li", line.text()).line();
      }
    }
    if (listed) {
      html.close("ul").line();
    }
  }

  private static void edited(String text, Markup html) {
    for (String paragraph : text.strip().split("\\R\\s*\\R")) {
      if (!paragraph.isBlank()) {
        html.open("p");
        String[] lines = paragraph.strip().split("\\R");
        for (int i = 0; i < lines.length; i++) {
          html.raw(i == 0 ? "" : "<br/>");
          html.plainElement("span", lines[i]);
        }
        html.close("p").line();
      }
    }
  }
}
