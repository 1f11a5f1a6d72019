package limberboard.desktop.workspace.history;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.history.parts.ListChange;
import limberboard.history.parts.Stretch;
import limberboard.history.parts.TextParts;
import limberboard.history.parts.WholeLines;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/** What changed in a page's header: short values in a table, of long ones the lines. */
final class ChangedKeys {
  private static final String NOTHING = "nothing";

  private ChangedKeys() {}

  /** The parts; none where no key changed. */
  static List<Part> between(TextParts before, TextParts now) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    List<Part> lengthy = new ArrayList<>();
    Set<String> keys = new LinkedHashSet<>(now.header().keySet());
    keys.addAll(before.header().keySet());
    for (String key : keys) {
      if (!before.key(key).equals(now.key(key))) {
        Optional<String> old = value(before, key);
        Optional<String> value = value(now, key);
        if (old.isPresent() && value.isPresent() && !old.equals(value)) {
          rows.add(List.of(Inline.text(key), Inline.text(old.get()), Inline.text(value.get())));
        } else {
          lines(key, before.key(key).orElse(""), now.key(key).orElse(""), lengthy);
        }
      }
    }
    List<Part> parts = new ArrayList<>();
    if (!rows.isEmpty()) {
      List<Block.Side> sides = List.of(Block.Side.LEFT, Block.Side.LEFT, Block.Side.LEFT);
      List<List<Inline>> head =
          List.of(Inline.text("Header"), Inline.text("Before"), Inline.text("Then"));
      parts.add(new Part(Part.Role.CHANGED_KEYS, "", List.of(new Block.Table(sides, head, rows))));
    }
    parts.addAll(lengthy);
    return parts;
  }

  /** A value on one line, or that there is none; empty where it takes several lines. */
  private static Optional<String> value(TextParts text, String key) {
    return text.key(key).isEmpty() ? Optional.of(NOTHING) : text.value(key);
  }

  private static void lines(String key, String before, String now, List<Part> to) {
    List<String> old = WholeLines.of(before);
    List<String> lines = WholeLines.of(now);
    List<Stretch> stretches = ListChange.between(old, lines);
    String out =
        stretches.stream()
            .flatMap(each -> old.subList(each.from(), each.to()).stream())
            .collect(Collectors.joining());
    String in =
        stretches.stream()
            .flatMap(each -> lines.subList(each.nowFrom(), each.nowTo()).stream())
            .collect(Collectors.joining());
    if (!out.isBlank()) {
      to.add(part(Part.Role.TAKEN_OUT, "Taken out of the header’s " + key, out));
    }
    if (!in.isBlank()) {
      to.add(part(Part.Role.ADDED, "Added to the header’s " + key, in));
    }
  }

  private static Part part(Part.Role role, String title, String lines) {
    return new Part(role, title, List.of(new Block.Verbatim(lines.stripTrailing())));
  }
}
