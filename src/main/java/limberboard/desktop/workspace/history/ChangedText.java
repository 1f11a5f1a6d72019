package limberboard.desktop.workspace.history;

import java.util.ArrayList;
import java.util.List;
import limberboard.history.parts.ListChange;
import limberboard.history.parts.Stretch;
import limberboard.history.parts.TextParts;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.markdown.MarkdownReader;
import limberboard.print.page.Block;
import limberboard.print.page.Part;
import limberboard.words.CountWords;

/**
 * A page's text with what was taken out and what was added, each in its place and rendered; long
 * stretches between them that stayed are told in one line. Not for the event thread.
 */
final class ChangedText {
  private static final int SHORT = 4;
  private final TextParts before;
  private final TextParts now;
  private final MarkdownReader reader;
  private final List<Part> parts = new ArrayList<>();

  ChangedText(TextParts before, TextParts now, LinkTargets targets) {
    this.before = before;
    this.now = now;
    this.reader = new MarkdownReader(targets);
  }

  /** The parts, in the order of the text; none where the texts are equal. */
  List<Part> parts() {
    List<Stretch> stretches = ListChange.between(before.body(), now.body());
    int from = 0;
    for (Stretch each : stretches) {
      kept(from, each.nowFrom(), from > 0, true);
      changed(Part.Role.TAKEN_OUT, "Taken out", before, each.from(), each.to());
      changed(Part.Role.ADDED, "Added", now, each.nowFrom(), each.nowTo());
      from = each.nowTo();
    }
    if (!stretches.isEmpty()) {
      kept(from, now.body().size(), true, false);
    }
    return parts;
  }

  private void changed(Part.Role role, String word, TextParts text, int from, int to) {
    List<String> pieces = text.body().subList(from, to);
    if (pieces.stream().allMatch(String::isBlank)) {
      return;
    }
    String heading = text.heading(from);
    String title = word + (heading.isEmpty() ? "" : " below “" + heading + "”");
    parts.add(
        new Part(role, title, blocks(tableHead(text.body(), from) + String.join("", pieces))));
  }

  /** The head of the table whose rows begin there, without which they would be no table. */
  private static String tableHead(List<String> body, int from) {
    int top = from;
    while (top > 0 && isRow(body.get(top - 1))) {
      top--;
    }
    boolean inTable = from < body.size() && isRow(body.get(from)) && from - top >= 2;
    return inTable ? String.join("", body.subList(top, top + 2)) : "";
  }

  private static boolean isRow(String piece) {
    return piece.startsWith("|");
  }

  /** What stayed: the last piece after a change, the first before the next one. */
  private void kept(int from, int to, boolean after, boolean ahead) {
    List<Integer> said = new ArrayList<>();
    for (int i = from; i < to; i++) {
      if (!now.body().get(i).isBlank()) {
        said.add(i);
      }
    }
    if (said.isEmpty()) {
      return;
    }
    if (said.size() <= SHORT) {
      plain(from, to);
      return;
    }
    int first = after ? said.get(0) + 1 : from;
    int last = ahead ? said.get(said.size() - 1) : to;
    if (after) {
      plain(from, first);
    }
    int left = said.size() - (after ? 1 : 0) - (ahead ? 1 : 0);
    parts.add(
        new Part(
            Part.Role.LEFT_OUT,
            "",
            List.of(Block.Paragraph.of("… " + CountWords.of(left, "paragraph") + " as before …"))));
    if (ahead) {
      plain(last, to);
    }
  }

  private void plain(int from, int to) {
    String head = tableHead(now.body(), from);
    List<Block> blocks = blocks(head + String.join("", now.body().subList(from, to)));
    if (!blocks.isEmpty()) {
      parts.add(new Part(Part.Role.BODY, "", blocks));
    }
  }

  private List<Block> blocks(String markdown) {
    return reader.read(markdown).stream().map(MarkdownReader.Read::block).toList();
  }
}
