package limberboard.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import limberboard.workings.QuantityWords;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A running-rigging list as CSV, RFC 4180; the columns are documented and stay. */
final class RiggingCsv {
  private static final String[] COLUMNS = {
    "id",
    "rope",
    "group",
    "purpose",
    "count",
    "length-m",
    "cut-m",
    "total-m",
    "diameter-mm",
    "construction",
    "material",
    "ends",
    "load-n",
    "needed-n",
    "breaking-n",
    "length-sum",
    "load-sum",
    "diameter-sum",
    "open"
  };

  private RiggingCsv() {}

  /** The list with its head line, lines ended by CR LF. */
  static String of(RunningRigging rigging) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter csv =
        new CSVPrinter(out, CSVFormat.RFC4180.builder().setHeader(COLUMNS).get())) {
      for (Rope rope : rigging.ropes()) {
        row(csv, RiggingView.RopeView.of(rope));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static void row(CSVPrinter csv, RiggingView.RopeView rope) throws IOException {
    csv.printRecord(
        rope.id(),
        rope.title(),
        rope.group(),
        rope.purpose(),
        rope.count(),
        number(rope.lengthMetres()),
        number(rope.cutMetres()),
        rope.cutMetres().map(cut -> QuantityWords.plain(cut * rope.count())).orElse(""),
        number(rope.diameterMillimetres()),
        rope.construction(),
        rope.material().orElse(""),
        String.join(" ", rope.ends()),
        number(rope.loadNewtons()),
        number(rope.neededNewtons()),
        number(rope.breakingNewtons()),
        rope.lengthSum(),
        rope.loadSum(),
        rope.diameterSum(),
        String.join("; ", rope.open()));
  }

  private static String number(Optional<Double> value) {
    return value.map(QuantityWords::plain).orElse("");
  }
}
