package limberboard.desktop.upkeep.log;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.boat.Boat;
import limberboard.library.page.Kind;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/** The lines of a log that are shown, as a sheet. */
final class LogPaper {
  private LogPaper() {}

  /**
   * The sheet.
   *
   * @param boat whose log it is
   * @param rows the lines, in the order in which they are shown
   * @param count how many there are, in words
   */
  static CutPage of(Boat boat, LogRows rows, String count) {
    List<Block.Side> sides =
        IntStream.range(0, rows.getColumnCount()).mapToObj(column -> Block.Side.LEFT).toList();
    List<List<Inline>> head =
        IntStream.range(0, rows.getColumnCount())
            .mapToObj(rows::getColumnName)
            .map(Inline::text)
            .toList();
    List<List<List<Inline>>> lines =
        IntStream.range(0, rows.getRowCount()).mapToObj(row -> line(rows, row)).toList();
    Part table = new Part(Part.Role.TABLES, "", List.of(new Block.Table(sides, head, lines)));
    return new CutPage(
        name(Optional.of(boat)),
        Kind.TOPIC,
        "log",
        "Log of " + boat.name(),
        count,
        boat.model().title() + ", built " + boat.built(),
        List.of(table));
  }

  private static List<List<Inline>> line(LogRows rows, int row) {
    return IntStream.range(0, rows.getColumnCount())
        .mapToObj(column -> Inline.text(rows.getValueAt(row, column)))
        .toList();
  }

  /** A file name without ending. */
  static String name(Optional<Boat> boat) {
    return "log-" + boat.map(Boat::id).orElse("boat");
  }
}
