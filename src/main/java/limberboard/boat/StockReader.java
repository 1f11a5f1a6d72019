package limberboard.boat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import limberboard.library.Library;
import limberboard.library.file.CsvText;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.QuantityText;

/** Reads a boat's stock; a broken line is reported and left out, the rest is read. */
final class StockReader {
  static final String STOCK = "stock.csv";
  private static final List<String> COLUMNS =
      List.of("material", "left", "opened", "best-before", "note");

  private final WorkspaceFolders folders;
  private final Library library;

  StockReader(WorkspaceFolders folders, Library library) {
    this.folders = folders;
    this.library = library;
  }

  /** The stock, with what is wrong in its file. */
  record Read(Stock stock, List<Problem> problems) {}

  /** Why a line cannot be used. */
  private static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;
    private final String key;
    private final String right;

    Unusable(String key, String wrong, String right) {
      super(wrong);
      this.key = key;
      this.right = right;
    }
  }

  Read read(Path path) {
    String file = folders.relative(path);
    TextFile.Result text = TextFile.read(folders, path, TextFile.LARGEST);
    if (!text.problems().isEmpty()) {
      return new Read(Stock.NONE, text.problems());
    }
    CsvText csv = CsvText.read(text.text());
    Optional<Problem> bad = csv.badHeader(file, COLUMNS);
    if (bad.isPresent()) {
      return new Read(Stock.NONE, List.of(bad.get()));
    }
    List<Problem> problems = new ArrayList<>();
    List<StockItem> items = new ArrayList<>();
    for (CsvText.Row line : csv.lines()) {
      try {
        items.add(item(csv.columns(), line));
      } catch (Unusable e) {
        problems.add(Problem.error(file, line.line(), e.key, e.getMessage(), e.right));
      }
    }
    csv.broken(file, "").ifPresent(problems::add);
    return new Read(new Stock(items), problems);
  }

  private StockItem item(List<String> columns, CsvText.Row line) throws Unusable {
    if (line.cells().size() != columns.size()) {
      LogLine.Unusable uneven = LogLine.uneven(line);
      throw new Unusable(uneven.key(), uneven.wrong(), uneven.right());
    }
    UnaryOperator<String> cells = column -> line.cells().get(columns.indexOf(column)).strip();
    Page<Material> material = material(cells.apply("material"));
    return new StockItem(
        material,
        left(cells.apply("left"), material),
        date(cells, "opened"),
        date(cells, "best-before"),
        cells.apply("note"));
  }

  private Page<Material> material(String id) throws Unusable {
    Optional<Page<Material>> page = library.material(id);
    if (page.isEmpty()) {
      List<String> known = library.all(Material.class).stream().map(Page::id).toList();
      throw new Unusable(
          "material",
          "there is no material \"" + id + "\"",
          Nearest.advice(id, known, "name a page of articles/materials"));
    }
    if (page.get().details().unit().isEmpty()) {
      throw new Unusable(
          "material", "\"" + id + "\" is a tool", "list only what is used up; take this line out");
    }
    return page.get();
  }

  private static Quantity<?> left(String text, Page<Material> material) throws Unusable {
    CountingUnit counted = material.details().unit().orElseThrow();
    KnownUnit unit = KnownUnit.counting(counted);
    String right = "write what is left in " + named(counted);
    try {
      OptionalDouble left = unit.of(QuantityText.parse(text));
      if (left.isEmpty()) {
        throw new Unusable("left", text + " cannot be counted in " + named(counted), right);
      }
      if (!Double.isFinite(left.getAsDouble())) {
        throw new Unusable("left", "is no amount that a boat can hold", right);
      }
      return unit.quantity(left.getAsDouble());
    } catch (IllegalArgumentException e) {
      throw new Unusable("left", e.getMessage(), right);
    }
  }

  private static String named(CountingUnit unit) {
    return unit == CountingUnit.PIECE ? "pieces, a plain number" : unit.word();
  }

  private static Optional<LocalDate> date(UnaryOperator<String> cells, String column)
      throws Unusable {
    String text = cells.apply(column);
    Typed<LocalDate> day = LogDay.read(text);
    if (!text.isEmpty() && day instanceof Typed.Bad<LocalDate> bad) {
      throw new Unusable(column, bad.wrong(), bad.right());
    }
    return day.good();
  }
}
