package limberboard.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.library.Kind;
import limberboard.library.Library;
import limberboard.library.MaterialGroup;
import limberboard.print.Block.Side;
import limberboard.upkeep.shopping.LeftOut;
import limberboard.upkeep.shopping.MixWarning;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.upkeep.shopping.Substitute;
import limberboard.upkeep.shopping.ToolLine;
import limberboard.upkeep.shopping.Usage;
import limberboard.workings.QuantityWords;

/**
 * A shopping list as a sheet that any output can render: cautions of the materials first, then what
 * must not be mixed, the boat, and what to get by shelf with boxes to tick. Immutable; any thread.
 */
public final class ShoppingSheet {
  private static final String BOX = "□ ";
  private static final int FEW = 3;

  private final Library library;
  private final ShoppingWords words = new ShoppingWords(QuantityWords.METRIC);

  /** Sheets whose cautions and pages are looked up in this library. */
  public ShoppingSheet(Library library) {
    this.library = library;
  }

  /** The sheet for paper. */
  public CutPage onPaper(ShoppingList list) {
    return of(list);
  }

  /** The sheet for a list. */
  public CutPage of(ShoppingList list) {
    Cutting cutting = new Cutting(library, Optional.of(list.fitting()), QuantityWords.METRIC);
    List<Part> parts = new ArrayList<>();
    cautions(list, cutting).part().map(ShoppingSheet::brief).ifPresent(parts::add);
    mixing(list).ifPresent(parts::add);
    parts.add(facts(list));
    parts.add(toGet(list, cutting));
    there(list, cutting).ifPresent(parts::add);
    substitutes(list, cutting).ifPresent(parts::add);
    tools(list, cutting).ifPresent(parts::add);
    leftOut(list).ifPresent(parts::add);
    return new CutPage(
        "shopping-list",
        Kind.MATERIAL,
        "Shopping list",
        "What to get for " + jobs(list.jobs().size()) + ", as of " + list.fitting().on() + ".",
        PageCutter.cutFor(list.fitting().boat()),
        parts);
  }

  private static String jobs(int count) {
    return count == 1 ? "one piece of work" : count + " pieces of work";
  }

  private static Cautions cautions(ShoppingList list, Cutting cutting) {
    Cautions cautions = new Cautions(cutting);
    list.lines()
        .forEach(
            line -> cautions.add(line.material().details().cautions(), line.material().title()));
    list.tools()
        .forEach(line -> cautions.add(line.tool().details().cautions(), line.tool().title()));
    return cautions;
  }

  /** In the shop the danger and the first thing to do are enough; each page says the rest. */
  private static Part brief(Part cautions) {
    List<Block> boxes = new ArrayList<>();
    for (Block block : cautions.blocks()) {
      boxes.add(block instanceof Block.CautionBox box ? brief(box) : block);
    }
    return new Part(cautions.role(), cautions.title(), boxes);
  }

  private static Block brief(Block.CautionBox box) {
    List<String> first = box.act().subList(0, Math.min(1, box.act().size()));
    return new Block.CautionBox(
        box.id(), box.title(), box.danger(), first, box.seek(), box.because());
  }

  private static Optional<Part> mixing(ShoppingList list) {
    List<List<Inline>> lines = list.warnings().stream().map(ShoppingSheet::warning).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.NOTICE, "What must not be mixed", List.of(Block.Items.dotted(lines))));
  }

  private static List<Inline> warning(MixWarning warning) {
    String grade = warning.grade() == MixWarning.Grade.NEVER ? "Never: " : "Take care: ";
    return List.of(
        new Inline.Strong(Inline.text(grade + warning.what() + ".")),
        new Inline.Text(" " + sentence(warning.why()) + ". Source: " + warning.source() + "."));
  }

  private static String sentence(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private static Part facts(ShoppingList list) {
    Boat boat = list.fitting().boat();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Boat", boat.name() + ", " + boat.model().title()));
    facts.add(Block.Fact.of("Lies in", boat.water().spoken() + " water"));
    facts.add(Block.Fact.of("Used for", boat.use().spoken()));
    facts.add(Block.Fact.of("Bought on", list.fitting().on().toString()));
    if (!list.missing().isEmpty()) {
      facts.add(Block.Fact.of("Pages missing", String.join(", ", list.missing())));
    }
    return new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts)));
  }

  private Part toGet(ShoppingList list, Cutting cutting) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    Optional<MaterialGroup> shelf = Optional.empty();
    for (ShoppingLine line : list.toGet()) {
      MaterialGroup group = line.material().details().group();
      if (!shelf.equals(Optional.of(group))) {
        shelf = Optional.of(group);
        rows.add(List.of(List.of(new Inline.Emphasis(Inline.text(shelf(group)))), List.of()));
      }
      rows.add(List.of(buy(line, cutting), needed(line)));
    }
    Block block =
        rows.isEmpty()
            ? Block.Paragraph.of("Nothing: the store has what this work takes.")
            : new Block.Table(
                List.of(Side.LEFT, Side.LEFT),
                List.of(Inline.text("Buy"), Inline.text("Needed for")),
                rows);
    return new Part(Part.Role.MATERIALS, "To get", List.of(block));
  }

  private static String shelf(MaterialGroup group) {
    return "Shelf: " + group.spoken();
  }

  private List<Inline> buy(ShoppingLine line, Cutting cutting) {
    List<Inline> text = new ArrayList<>();
    text.add(new Inline.Text(BOX));
    text.add(new Inline.Strong(List.of(cutting.link(line.material().id()))));
    text.add(new Inline.LineBreak());
    text.add(new Inline.Text(sentence(words.buy(line))));
    for (String remark : words.remarks(line)) {
      text.add(new Inline.LineBreak());
      text.add(new Inline.Text(sentence(remark)));
    }
    for (Substitute substitute : line.substitutes()) {
      if (substitute.isOffered()) {
        text.add(new Inline.LineBreak());
        text.add(new Inline.Text("Or from the store: "));
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
    Map<String, Integer> uses = new LinkedHashMap<>();
    for (Usage use : line.uses()) {
      uses.merge(use.job().work().title() + ": " + words.use(line, use), 1, Integer::sum);
    }
    uses.forEach(
        (words, count) -> {
          text.add(new Inline.LineBreak());
          text.add(new Inline.Text((count > 1 ? count + " × " : "") + words));
        });
    return text;
  }

  private Optional<Part> there(ShoppingList list, Cutting cutting) {
    List<List<Inline>> lines = new ArrayList<>();
    for (ShoppingLine line : list.there()) {
      String where = line.material().details().isBought() ? " from the store" : " from the tap";
      List<Inline> text = new ArrayList<>();
      text.add(new Inline.Text(BOX));
      text.add(cutting.link(line.material().id()));
      text.add(new Inline.Text(": " + words.amount(line.material(), line.needed()) + where));
      if (line.material().details().isBought()) {
        text.add(new Inline.Text(" (" + String.join("; ", words.remarks(line)) + ")"));
      }
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

  private Optional<Part> substitutes(ShoppingList list, Cutting cutting) {
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

  private static Optional<Part> tools(ShoppingList list, Cutting cutting) {
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

  private static Optional<Part> leftOut(ShoppingList list) {
    List<List<Inline>> lines = new ArrayList<>();
    for (LeftOut left : list.leftOut()) {
      lines.add(Inline.text(left.work().title() + ": " + left.why()));
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.LEFT_OUT,
                "Work that nothing is bought for",
                List.of(Block.Items.dotted(lines))));
  }
}
