package limberboard.print.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Model.Zone;
import limberboard.library.page.Procedure;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListPart;
import limberboard.upkeep.list.WorkList;
import limberboard.workings.QuantityWords;

/**
 * A list of work as CSV after RFC 4180: a header line, then one line a piece of work. Immutable.
 */
public final class WorkListCsv {
  private static final String[] COLUMNS = {
    "number",
    "part",
    "page",
    "title",
    "zone",
    "minutes",
    "with",
    "skill",
    "why",
    "due",
    "good",
    "bad",
    "open",
    "open-minutes",
    "close",
    "cautions"
  };

  private final Library library;

  /** Tables whose cautions are looked up in this library. */
  public WorkListCsv(Library library) {
    this.library = library;
  }

  /** The list; several accesses or cautions in one cell are separated by semicolons. */
  public String render(WorkList list) {
    WorkCautions cautions = WorkCautions.on(library, list.fitting());
    CsvTable csv = new CsvTable(COLUMNS);
    for (ListPart part : list.parts()) {
      part.lines().forEach(line -> csv.row(cells(part, line, cautions.of(line.work()))));
    }
    return csv.text();
  }

  private static List<String> cells(ListPart part, ListLine line, List<WorkCaution> cautions) {
    Optional<Procedure.LookFor> look = line.work().details().lookFor();
    return List.of(
        Integer.toString(line.number()),
        part.phase().word(),
        line.work().id(),
        line.work().title(),
        line.zone().map(Zone::id).orElse(""),
        Integer.toString(line.minutes()),
        line.task().with().stream().map(each -> each.work().id()).collect(Collectors.joining(";")),
        line.work().details().skill().word(),
        line.task().why().said(),
        line.task().due().map(Object::toString).orElse(""),
        look.map(Procedure.LookFor::good).orElse(""),
        look.map(Procedure.LookFor::bad).orElse(""),
        ids(line.open()),
        QuantityWords.plain(line.open().stream().mapToDouble(Access::minutes).sum()),
        ids(line.close()),
        cautions.stream().map(WorkCaution::id).collect(Collectors.joining(";")));
  }

  /** Ids of accesses in one cell. */
  static String ids(List<Access> accesses) {
    return accesses.stream().map(Access::id).collect(Collectors.joining(";"));
  }
}
