package limberboard.print.cut;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Caution;
import limberboard.print.page.Block;
import limberboard.print.page.Part;

/** Cautions as the part of a page that comes before all others. */
public final class Cautions {
  private Cautions() {}

  /** The part; empty when there are none. */
  public static Optional<Part> part(List<WorkCaution> cautions) {
    return cautions.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(Part.Role.CAUTIONS, "", cautions.stream().<Block>map(Cautions::box).toList()));
  }

  /** One in full. */
  public static Block.CautionBox box(WorkCaution caution) {
    Caution details = caution.page().details();
    return new Block.CautionBox(
        caution.id(),
        caution.title(),
        details.danger(),
        details.act(),
        details.seek(),
        caution.because());
  }

  /** Their titles in one line; empty when there are none. */
  public static Optional<String> titles(List<WorkCaution> cautions) {
    return cautions.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join("; ", cautions.stream().map(WorkCaution::title).toList()));
  }
}
