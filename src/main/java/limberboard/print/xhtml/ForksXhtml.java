package limberboard.print.xhtml;

import java.util.List;
import limberboard.print.drawing.Markup;
import limberboard.print.page.Block;
import limberboard.print.type.Typography;

/**
 * Writes the forks of a tree two side by side, each pair a table of its own that is never divided
 * between two sheets. For one page, on one thread.
 */
final class ForksXhtml {
  private static final int SIDE_BY_SIDE = 2;

  private final Markup out;
  private final InlineXhtml inlines;

  ForksXhtml(Markup out, InlineXhtml inlines) {
    this.out = out;
    this.inlines = inlines;
  }

  void forks(Block.Forks forks) {
    List<Block.Fork> all = forks.forks();
    for (int i = 0; i < all.size(); i += SIDE_BY_SIDE) {
      out.open("table", "class", "forks").open("tbody").open("tr").line();
      cell(all.get(i), "fork fork-left");
      if (i + 1 < all.size()) {
        cell(all.get(i + 1), "fork fork-right");
      } else {
        out.empty("td", "class", "fork-right");
      }
      out.close("tr").close("tbody").close("table").line();
    }
  }

  private void cell(Block.Fork fork, String name) {
    out.open("td", "class", name).open("div", "class", "fork-what");
    out.element("span", fork.number() + " ", "class", "fork-number");
    inlines.all(fork.what());
    fork.from().ifPresent(from -> out.element("span", " from\u00a0" + from, "class", "fork-from"));
    out.close("div").line();
    if (!fork.cautions().isEmpty()) {
      out.element("div", fork.cautions(), "class", "fork-caution").line();
    }
    if (!fork.facts().isEmpty()) {
      String facts = String.join(". ", fork.facts().stream().map(ForksXhtml::unstopped).toList());
      out.element("div", Typography.joined(facts + "."), "class", "fork-facts").line();
    }
    fork.ways().forEach(this::way);
    out.close("td").line();
  }

  private static String unstopped(String fact) {
    return fact.endsWith(".") ? fact.substring(0, fact.length() - 1) : fact;
  }

  private void way(Block.Way way) {
    out.open("div", "class", "way").element("span", way.finding(), "class", "way-finding");
    out.text(" ").element("span", Typography.joined(way.chance()), "class", "way-chance");
    out.text(" " + Typography.joined(way.then())).close("div").line();
  }
}
