package limberboard.print.sheet;

import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Page;
import limberboard.library.value.RopeEnd;
import limberboard.rigging.Pull;
import limberboard.rigging.Rope;
import limberboard.rigging.RopeLength;
import limberboard.rigging.RunningRigging;
import limberboard.rigging.Thickness;
import limberboard.workings.QuantityWords;

/** A running-rigging list as CSV, RFC 4180; the columns are documented and stay. Stateless. */
public final class RiggingCsv {
  private static final double THOUSAND = 1000;
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
    "open",
    "cautions"
  };

  /** The list with its head line, lines ended by CR LF. */
  public String render(RunningRigging rigging) {
    CsvTable csv = new CsvTable(COLUMNS);
    rigging.ropes().forEach(rope -> row(csv, rigging, rope));
    return csv.text();
  }

  private static void row(CsvTable csv, RunningRigging rigging, Rope rope) {
    Optional<RopeLength.Cut> cut = as(RopeLength.Cut.class, rope.length());
    Optional<Thickness.Chosen> chosen = as(Thickness.Chosen.class, rope.thickness());
    Optional<Pull.Reckoned> pull = as(Pull.Reckoned.class, rope.pull());
    csv.row(
        rope.id(),
        rope.title(),
        rope.group().word(),
        rope.purpose(),
        rope.count(),
        number(cut.map(RopeLength.Cut::metres)),
        number(cut.map(RopeLength.Cut::cut)),
        number(cut.map(known -> rounded(known.cut()) * rope.count())),
        number(chosen.map(Thickness.Chosen::millimetres)),
        rope.construction().word(),
        rope.material().map(Page::id).orElse(""),
        String.join(" ", rope.ends().stream().map(RopeEnd::word).toList()),
        number(pull.map(Pull.Reckoned::newtons)),
        number(chosen.map(Thickness.Chosen::needed).filter(needed -> needed > 0)),
        number(chosen.map(Thickness.Chosen::breaking)),
        rope.length().working(),
        pull.map(Pull.Reckoned::source).orElse(""),
        chosen.map(Thickness.Chosen::working).orElse(""),
        String.join("; ", rope.open()),
        String.join(" ", rigging.cautions(rope).stream().map(WorkCaution::id).toList()));
  }

  private static <T> Optional<T> as(Class<T> type, Object value) {
    return Optional.of(value).filter(type::isInstance).map(type::cast);
  }

  private static String number(Optional<Double> value) {
    return value.map(RiggingCsv::rounded).map(QuantityWords::plain).orElse("");
  }

  /** To a thousandth: finer digits are the computer's, not the boat's. */
  private static double rounded(double value) {
    return Math.round(value * THOUSAND) / THOUSAND;
  }
}
