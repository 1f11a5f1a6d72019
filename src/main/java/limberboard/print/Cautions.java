package limberboard.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Caution;
import limberboard.library.Page;

/**
 * Collects cautions, each once, in the order in which they are named. A caution whose page cannot
 * be read is shown all the same, and says so. For one page, on one thread.
 */
final class Cautions {
  private final Cutting cutting;
  private final Map<String, Block.CautionBox> boxes = new LinkedHashMap<>();

  Cautions(Cutting cutting) {
    this.cutting = cutting;
  }

  /** Adds cautions that the page itself names. */
  void add(List<String> ids) {
    add(ids, "");
  }

  /** Adds cautions that something brings in, such as a material; the first to name one stands. */
  void add(List<String> ids, String because) {
    ids.forEach(id -> boxes.computeIfAbsent(id, key -> box(key, because)));
  }

  /** Adds a caution given as its page. */
  void add(Page<Caution> page) {
    boxes.computeIfAbsent(page.id(), key -> box(page, ""));
  }

  /** The part, which comes before all others; empty when there are none. */
  Optional<Part> part() {
    return boxes.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.CAUTIONS, "", new ArrayList<>(boxes.values())));
  }

  private Block.CautionBox box(String id, String because) {
    return cutting
        .library()
        .caution(id)
        .map(page -> box(page, because))
        .orElseGet(() -> unreadable(id, because));
  }

  private static Block.CautionBox box(Page<Caution> page, String because) {
    Caution caution = page.details();
    return new Block.CautionBox(
        page.id(), page.title(), caution.danger(), caution.act(), caution.seek(), because);
  }

  private static Block.CautionBox unreadable(String id, String because) {
    return new Block.CautionBox(
        id,
        id.replace('-', ' '),
        "The page of this caution is missing or cannot be read.",
        List.of("Do not begin before somebody who knows this danger has told you what to do."),
        "",
        because);
  }
}
