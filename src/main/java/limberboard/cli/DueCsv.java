package limberboard.cli;

import java.util.List;
import limberboard.library.value.Phase;
import limberboard.print.sheet.CsvTable;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;

/** What is due as CSV, RFC 4180; the columns are documented and stay. */
final class DueCsv {
  private static final String[] COLUMNS = {
    "boat",
    "id",
    "title",
    "page",
    "work",
    "group",
    "runs-out",
    "estimated",
    "plan",
    "phase",
    "season",
    "minutes",
    "owner-minutes",
    "left-undone",
    "need",
    "round",
    "skill",
    "why",
    "cautions"
  };

  private DueCsv() {}

  /** The work of all these boats with a head line, lines ended by CR LF. */
  static String of(List<Upkeep> boats) {
    CsvTable csv = new CsvTable(COLUMNS);
    for (Upkeep upkeep : boats) {
      upkeep.all().forEach(due -> row(csv, upkeep, due));
    }
    return csv.text();
  }

  private static void row(CsvTable csv, Upkeep upkeep, Due due) {
    DueView.Item item = DueView.Item.of(due, upkeep);
    csv.row(
        upkeep.fitting().boat().id(),
        item.id(),
        item.title(),
        item.page(),
        item.work(),
        item.group(),
        item.runsOut().orElse(""),
        item.estimated() ? "yes" : "no",
        item.plan(),
        due.phase().map(Phase::word).orElse(""),
        due.season(),
        item.minutes(),
        item.ownerMinutes(),
        item.leftUndone(),
        item.need(),
        item.round().orElse(""),
        item.skill(),
        item.why(),
        String.join(" ", item.cautions()));
  }
}
