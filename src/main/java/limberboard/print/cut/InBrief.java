package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;

/** What it takes, in a line of its own each: a name, and one thing after the other. */
final class InBrief {
  private static final String NEXT = "; ";

  private InBrief() {}

  /** The line; empty when there is nothing to stand in it. */
  static Optional<Block> line(String name, List<List<Inline>> each) {
    if (each.isEmpty()) {
      return Optional.empty();
    }
    List<Inline> line = new ArrayList<>(List.of(new Inline.Strong(Inline.text(name + ":"))));
    String before = " ";
    for (List<Inline> one : each) {
      line.add(new Inline.Text(before));
      line.addAll(one);
      before = NEXT;
    }
    return Optional.of(new Block.Paragraph(line));
  }

  /** Several names with what they are, in one line. */
  static Block named(List<Block.Fact> facts) {
    List<Inline> line = new ArrayList<>();
    for (Block.Fact fact : facts) {
      line.add(new Inline.Text(line.isEmpty() ? "" : " · "));
      line.add(new Inline.Strong(Inline.text(fact.name() + ":")));
      line.add(new Inline.Text(" "));
      line.addAll(fact.value());
    }
    return new Block.Paragraph(line);
  }
}
