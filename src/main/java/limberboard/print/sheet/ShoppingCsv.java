package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.MaterialGroup;
import limberboard.rigging.RopeTotal;
import limberboard.upkeep.shopping.Batch;
import limberboard.upkeep.shopping.NewRope;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.upkeep.shopping.ToolLine;
import limberboard.upkeep.shopping.Usage;
import limberboard.words.Sentences;
import limberboard.workings.PackWords;
import limberboard.workings.QuantityWords;
import limberboard.workings.Rounded;

/**
 * A shopping list as CSV (RFC 4180): for each material one row a use or rope and then one row with
 * the total, which is their sum; then ropes that no page describes; then one row a tool. Stateless.
 */
public final class ShoppingCsv {
  private static final String[] COLUMNS = {
    "row",
    "material",
    "title",
    "group",
    "work",
    "times",
    "day",
    "amount",
    "unit",
    "from-stock",
    "to-get",
    "packs",
    "left-over",
    "buy-from",
    "working",
    "note",
    "cautions"
  };
  private static final String NONE = "";

  private final PackWords packs = new PackWords(QuantityWords.METRIC);
  private final ShoppingWords words = new ShoppingWords(QuantityWords.METRIC);

  /** The list with its head line. */
  public String render(ShoppingList list) {
    CsvTable rows = new CsvTable(COLUMNS);
    for (ShoppingLine line : list.lines()) {
      line.uses().forEach(use -> use(list, line, use, rows));
      total(list, line, rows);
    }
    list.otherRopes().forEach(total -> otherRope(total, rows));
    list.tools().forEach(tool -> tool(list, tool, rows));
    return rows.text();
  }

  private void use(ShoppingList list, ShoppingLine line, Usage use, CsvTable rows) {
    String purpose = use.isReckoned() ? use.purpose() : ShoppingWords.open(use);
    String shared = words.shared(line, use);
    String look = use.isLookFirst() ? Sentences.lowered(ShoppingWords.LOOK_FIRST) : NONE;
    rows.row(
        use.by() instanceof NewRope ? "rope" : "use",
        line.material().id(),
        line.material().title(),
        line.material().details().group().word(),
        use.by().id(),
        use.by().times(),
        use.by().day(),
        use.isReckoned() ? Rounded.text(use.amount()) : NONE,
        unit(line),
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        use.working(),
        String.join(
            "; ", Stream.of(purpose, shared, look).filter(text -> !text.isEmpty()).toList()),
        ids(list.cautions(use.by())));
  }

  /** Rope that no page describes: its pieces, then what they come to. */
  private static void otherRope(RopeTotal total, CsvTable rows) {
    String title = ShoppingWords.kind(total);
    for (RopeTotal.Piece piece : total.pieces()) {
      String of = piece.count() + " × " + QuantityWords.plain(piece.metres()) + " m";
      rope("rope", title, piece.title(), piece.count() * piece.metres(), of, piece.ends(), rows);
    }
    rope("total", title, NONE, total.metres(), NONE, NONE, rows);
  }

  private static void rope(
      String row, String title, String rope, double metres, String of, String ends, CsvTable rows) {
    rows.row(
        row,
        NONE,
        title,
        MaterialGroup.CORDAGE.word(),
        rope,
        NONE,
        NONE,
        Rounded.text(metres),
        CountingUnit.M.word(),
        row.equals("total") ? Rounded.text(0) : NONE,
        row.equals("total") ? Rounded.text(metres) : NONE,
        NONE,
        NONE,
        NONE,
        of,
        ends,
        NONE);
  }

  private void total(ShoppingList list, ShoppingLine line, CsvTable rows) {
    boolean known = line.uses().stream().anyMatch(Usage::isReckoned);
    rows.row(
        "total",
        line.material().id(),
        line.material().title(),
        line.material().details().group().word(),
        NONE,
        NONE,
        NONE,
        known ? Rounded.text(line.needed()) : NONE,
        unit(line),
        Rounded.text(line.fromStock()),
        Rounded.text(line.missing()),
        packs.of(line.packs()),
        line.leftOver().map(Rounded::text).orElse(NONE),
        String.join(" ", buyFrom(line)),
        NONE,
        String.join("; ", words.remarks(line)),
        ids(list.cautionsOf().of(line.material())));
  }

  private static List<String> buyFrom(ShoppingLine line) {
    return line.batches().stream()
        .map(Batch::buyFrom)
        .flatMap(day -> day.map(Object::toString).stream())
        .distinct()
        .toList();
  }

  private static void tool(ShoppingList list, ToolLine line, CsvTable rows) {
    rows.row(
        "tool",
        line.tool().id(),
        line.tool().title(),
        line.tool().details().group().word(),
        String.join(" ", line.jobs().stream().map(job -> job.work().id()).distinct().toList()),
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        NONE,
        ids(cautions(list, line)));
  }

  /** Those of the tool itself, then those of the work that it is for. */
  private static List<WorkCaution> cautions(ShoppingList list, ToolLine line) {
    List<List<WorkCaution>> all = new ArrayList<>(List.of(list.cautionsOf().of(line.tool())));
    line.jobs().forEach(job -> all.add(list.cautions(job)));
    return WorkCautions.joined(all);
  }

  private static String ids(List<WorkCaution> cautions) {
    return String.join(" ", cautions.stream().map(WorkCaution::id).toList());
  }

  private static String unit(ShoppingLine line) {
    return line.material().details().unit().map(CountingUnit::word).orElse(NONE);
  }
}
