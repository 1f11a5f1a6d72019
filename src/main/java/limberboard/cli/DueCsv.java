package limberboard.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import limberboard.library.Phase;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

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
    "skill",
    "why",
    "cautions"
  };

  private DueCsv() {}

  /** The work of all these boats with a head line, lines ended by CR LF. */
  static String of(List<Upkeep> boats) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter csv =
        new CSVPrinter(out, CSVFormat.RFC4180.builder().setHeader(COLUMNS).get())) {
      for (Upkeep upkeep : boats) {
        for (Due due : upkeep.all()) {
          row(csv, upkeep, due);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static void row(CSVPrinter csv, Upkeep upkeep, Due due) throws IOException {
    DueView.Item item = DueView.Item.of(due, upkeep);
    csv.printRecord(
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
        item.skill(),
        item.why(),
        String.join(" ", item.cautions()));
  }
}
