package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.library.value.MaterialGroup;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.CutContext;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.rigging.RopeTotal;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.upkeep.shopping.Substitute;
import limberboard.upkeep.shopping.ToolLine;
import limberboard.upkeep.shopping.Usage;
import limberboard.words.Sentences;
import limberboard.workings.QuantityWords;

/**
 * What a shopping list says to get, shelf by shelf, what is there, what may be taken instead, and
 * the tools. For one sheet, on one thread.
 */
final class ShoppingTables {
  private static final String BOX = "□ ";
  private static final int FEW = 3;

  private final ShoppingList list;
  private final CutContext cutting;
  private final boolean close;
  private final ShoppingWords words = new ShoppingWords(QuantityWords.METRIC);

  /**
   * Tables of a list.
   *
   * @param close whether they are set close, for paper: what belongs to one material runs on in one
   *     line, and the name of a shelf stands in the row of its first material, so that it is never
   *     alone at the foot of a sheet
   */
  ShoppingTables(ShoppingList list, CutContext cutting, boolean close) {
    this.list = list;
    this.cutting = cutting;
    this.close = close;
  }

  /** What to buy in any case. */
  Part toGet() {
    List<ShoppingLine> lines = list.toGetAnyway();
    boolean later = !list.toGetAfterLook().isEmpty();
    Block block =
        lines.isEmpty()
            ? Block.Paragraph.of(
                later ? "Nothing in any case." : "Nothing: what this work takes is in stock.")
            : table(lines);
    return new Part(Part.Role.MATERIALS, "To get", List.of(block));
  }

  /** What may turn out not to be needed, since nobody knows when its work was last done. */
  Optional<Part> afterLook() {
    List<ShoppingLine> lines = list.toGetAfterLook();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.MATERIALS,
                ShoppingWords.LOOK_FIRST,
                List.of(Block.Paragraph.of(ShoppingWords.WHY_LOOK), table(lines))));
  }

  private Block table(List<ShoppingLine> lines) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    Optional<MaterialGroup> shelf = Optional.empty();
    for (ShoppingLine line : lines) {
      MaterialGroup group = line.material().details().group();
      if (!shelf.equals(Optional.of(group))) {
        shelf = Optional.of(group);
        rows.addAll(first(group, List.of(buy(line), needed(line))));
      } else {
        rows.add(List.of(buy(line), needed(line)));
      }
    }
    return new Block.Table(
        List.of(Side.LEFT, Side.LEFT),
        List.of(Inline.text("Buy"), Inline.text("Needed for")),
        rows);
  }

  /** Rope whose kind no page describes. */
  Optional<Part> otherRopes() {
    List<List<Inline>> lines = new ArrayList<>();
    for (RopeTotal total : list.otherRopes()) {
      String pieces =
          total.pieces().stream()
              .map(
                  piece ->
                      piece.title()
                          + " "
                          + ShoppingWords.lengths(
                              Collections.nCopies(piece.count(), piece.metres()))
                          + ", "
                          + piece.ends())
              .collect(Collectors.joining("; "));
      lines.add(
          List.of(
              new Inline.Text(BOX),
              new Inline.Strong(Inline.text(ShoppingWords.kind(total))),
              new Inline.Text(": " + QuantityWords.plain(total.metres()) + " m. " + pieces)));
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.MATERIALS,
                "Rope that has no page of its own, by the metre, not looked for in stock",
                List.of(Block.Items.dotted(lines))));
  }

  /** The first row of a shelf, with the name of the shelf. */
  private List<List<List<Inline>>> first(MaterialGroup group, List<List<Inline>> row) {
    Inline shelf = new Inline.Emphasis(Inline.text(shelf(group)));
    return close
        ? List.of(List.of(below(shelf, row.get(0)), below(new Inline.Text("\u00a0"), row.get(1))))
        : List.of(List.of(List.of(shelf), List.of()), row);
  }

  private static List<Inline> below(Inline first, List<Inline> text) {
    List<Inline> all = new ArrayList<>(List.of(first, new Inline.LineBreak()));
    all.addAll(text);
    return all;
  }

  private static String shelf(MaterialGroup group) {
    return "Shelf: " + group.spoken();
  }

  private List<Inline> buy(ShoppingLine line) {
    List<Inline> text = new ArrayList<>();
    text.add(new Inline.Text(BOX));
    text.add(new Inline.Strong(List.of(cutting.link(line.material().id()))));
    text.add(close ? new Inline.Text(": ") : new Inline.LineBreak());
    text.add(new Inline.Text(close ? words.buy(line) : Sentences.capital(words.buy(line))));
    for (String remark : words.remarks(line)) {
      text.add(close ? new Inline.Text(". ") : new Inline.LineBreak());
      text.add(new Inline.Text(Sentences.capital(remark)));
    }
    Cautions.titles(list.cautions(line))
        .ifPresent(
            names -> {
              text.add(close ? new Inline.Text(". ") : new Inline.LineBreak());
              text.add(new Inline.Strong(Inline.text("Caution: " + names)));
            });
    for (Substitute substitute : line.substitutes()) {
      if (substitute.isOffered()) {
        text.add(close ? new Inline.Text(". ") : new Inline.LineBreak());
        text.add(new Inline.Text("Or from stock: "));
        text.add(cutting.link(substitute.material().id()));
      }
    }
    return text;
  }

  private List<Inline> needed(ShoppingLine line) {
    boolean known = line.uses().stream().anyMatch(Usage::isReckoned);
    String sum = known ? words.amount(line.material(), line.needed()) : "Not known";
    List<Inline> text = new ArrayList<>();
    text.add(new Inline.Strong(Inline.text(sum)));
    if (known && !line.open().isEmpty()) {
      text.add(new Inline.Text(" and what has to be measured"));
    }
    perhaps(line).ifPresent(words -> text.add(new Inline.Text(words)));
    if (close) {
      together(line, text);
    } else {
      uses(line)
          .forEach(
              (use, count) -> {
                text.add(new Inline.LineBreak());
                text.add(new Inline.Text(times(count) + use.work() + ": " + use.how()));
              });
    }
    return text;
  }

  /** How much of what is needed a look or a question may spare, where the rest is needed anyway. */
  private Optional<String> perhaps(ShoppingLine line) {
    double spared =
        line.uses().stream().filter(Usage::isLookFirst).mapToDouble(Usage::amount).sum();
    return spared <= 0 || line.isLookFirst()
        ? Optional.empty()
        : Optional.of(", of it " + words.amount(line.material(), spared) + " look or ask first");
  }

  /** All uses in one line, with semicolons between them. */
  private void together(ShoppingLine line, List<Inline> text) {
    String between = ": ";
    for (Map.Entry<Use, Integer> use : uses(line).entrySet()) {
      text.add(new Inline.Text(between + times(use.getValue())));
      text.add(new Inline.Emphasis(Inline.text(use.getKey().work() + ",")));
      text.add(new Inline.Text(" " + use.getKey().how()));
      between = "; ";
    }
  }

  /** A use in words: for which work, and how much. */
  private record Use(String work, String how) {}

  /** The uses in order, with how often each comes. */
  private Map<Use, Integer> uses(ShoppingLine line) {
    Map<Use, Integer> uses = new LinkedHashMap<>();
    for (Usage use : line.uses()) {
      uses.merge(new Use(use.by().title(), words.use(line, use)), 1, Integer::sum);
    }
    return uses;
  }

  private static String times(int count) {
    return count > 1 ? count + " × " : "";
  }

  /** What the stock or the tap has. */
  Optional<Part> there() {
    List<List<Inline>> lines = new ArrayList<>();
    for (ShoppingLine line : list.there()) {
      String where = line.material().details().isBought() ? " from stock" : " from the tap";
      List<Inline> text = new ArrayList<>();
      text.add(new Inline.Text(BOX));
      text.add(cutting.link(line.material().id()));
      text.add(new Inline.Text(": " + words.amount(line.material(), line.needed()) + where));
      if (line.material().details().isBought()) {
        text.add(new Inline.Text(" (" + String.join("; ", words.remarks(line)) + ")"));
      }
      Cautions.titles(list.cautions(line))
          .ifPresent(names -> text.add(new Inline.Strong(Inline.text(". Caution: " + names))));
      lines.add(text);
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.TABLES,
                "Have ready, nothing to buy",
                List.of(Block.Items.dotted(lines))));
  }

  /** What may be taken instead. */
  Optional<Part> substitutes() {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (ShoppingLine line : list.toGet()) {
      for (Substitute substitute : line.substitutes()) {
        rows.add(
            List.of(
                List.of(cutting.link(line.material().id())),
                List.of(cutting.link(substitute.material().id())),
                Inline.text(words.substitute(substitute))));
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.TABLES,
                "What may be taken instead",
                List.of(
                    new Block.Table(
                        List.of(Side.LEFT, Side.LEFT, Side.LEFT),
                        List.of(
                            Inline.text("Instead of"),
                            Inline.text("Take"),
                            Inline.text("What it is good for")),
                        rows))));
  }

  /** The tools. */
  Optional<Part> tools() {
    List<List<Inline>> lines = new ArrayList<>();
    for (ToolLine tool : list.tools()) {
      lines.add(
          List.of(
              new Inline.Text(BOX),
              cutting.link(tool.tool().id()),
              new Inline.Text(": " + some(tool.work()))));
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.TOOLS, "Tools", List.of(Block.Items.dotted(lines))));
  }

  /** The first few; a bucket is needed for half of all work. */
  private static String some(List<String> work) {
    return work.size() <= FEW + 1
        ? String.join("; ", work)
        : String.join("; ", work.subList(0, FEW)) + "; and " + (work.size() - FEW) + " more";
  }
}
