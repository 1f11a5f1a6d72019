package limberboard.print.xhtml;

import java.util.stream.IntStream;
import limberboard.print.drawing.Markup;
import limberboard.print.page.Block;
import limberboard.print.type.Typography;

/** Writes lists to tick off as XHTML. For one page, on one thread. */
final class TickListXhtml {
  private static final String GOOD = "Good";

  private final Markup out;
  private final InlineXhtml inlines;

  TickListXhtml(Markup out, InlineXhtml inlines) {
    this.out = out;
    this.inlines = inlines;
  }

  void list(Block.TickList list) {
    out.open("table", "class", "ticks").open("thead").open("tr").open("td", "class", "tick-cell");
    out.open("table", "class", "tick").open("tbody").open("tr");
    out.element("th", list.close() ? "Done" : "", "class", "tick-box")
        .element("th", "", "class", "tick-number");
    boolean judged = isJudged(list);
    if (list.close()) {
      out.element(
          "th",
          judged ? "What to do, and what good and bad look like" : "What to do",
          "class",
          "tick-both");
    } else {
      out.element("th", "What to do", "class", "tick-what");
      out.element(
          "th",
          judged ? "What good and bad look like" : "What belongs to it",
          "class",
          "tick-beside");
    }
    out.close("tr").close("tbody").close("table");
    out.close("td").close("tr").close("thead").open("tbody").line();
    list.ticks().forEach(tick -> tick(tick, list.close()));
    if (list.ticks().isEmpty()) {
      out.open("tr").empty("td").close("tr").line();
    }
    out.close("tbody").close("table").line();
    if (list.notes() > 0) {
      notes(list.notes());
    }
  }

  /** Whether the list says of anything what good looks like. */
  private static boolean isJudged(Block.TickList list) {
    return list.ticks().stream()
        .flatMap(tick -> tick.beside().stream())
        .anyMatch(fact -> fact.name().equals(GOOD));
  }

  /** A table of its own within its row: rows can be divided between two sheets, it cannot. */
  private void tick(Block.Tick tick, boolean close) {
    boolean passing = tick.number().isEmpty();
    out.open("tr").open("td", "class", "tick-cell");
    out.open("table", "class", passing ? "tick passing" : "tick").open("tbody").open("tr");
    out.open("td", "class", "tick-box").element("span", "", "class", "box").close("td");
    if (passing) {
      out.open("td", "colspan", close ? "2" : "3");
      inlines.all(tick.what());
    } else if (close) {
      out.element("td", tick.number(), "class", "tick-number");
      out.open("td", "class", "tick-both");
      what(tick, "span");
      tick.beside().forEach(this::beside);
    } else {
      out.element("td", tick.number(), "class", "tick-number").open("td", "class", "tick-what");
      what(tick, "div");
      out.close("td").open("td", "class", "tick-beside");
      tick.beside().forEach(this::beside);
    }
    out.close("td").close("tr").close("tbody").close("table").close("td").close("tr").line();
  }

  private void what(Block.Tick tick, String element) {
    out.open(element, "class", "tick-title");
    inlines.all(tick.what());
    out.close(element);
    for (String fact : tick.facts()) {
      out.element(element, " " + Typography.joined(fact), "class", "tick-fact").line();
    }
  }

  private void beside(Block.Fact fact) {
    out.open("div").element("span", fact.name() + ": ", "class", "tick-name");
    inlines.all(fact.value());
    out.close("div").line();
  }

  private void notes(int lines) {
    out.open("div", "class", "notes").element("div", "Notes", "class", "note");
    IntStream.range(1, lines).forEach(line -> out.element("div", "\u00a0", "class", "note"));
    out.close("div").line();
  }
}
