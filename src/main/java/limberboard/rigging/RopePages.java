package limberboard.rigging;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.page.RopeKind;
import limberboard.library.page.RopePlan;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.RopeConstruction;

/**
 * The pages of ropes. Immutable.
 *
 * @param library where pages named by a model are looked up
 * @param ropes pages that say which rope they are, by id
 */
record RopePages(Library library, List<Page<Material>> ropes) {
  private static final double HAIR = 1e-6;

  static RopePages of(Library library) {
    return new RopePages(
        library,
        library.all(Material.class).stream()
            .filter(page -> page.details().rope().isPresent())
            .sorted(Comparator.comparing(Page::id))
            .toList());
  }

  /** The page of a rope: the one its model names, or the first of its construction and diameter. */
  Optional<Page<Material>> page(RopePlan plan, Thickness thickness) {
    if (plan.material().isPresent()) {
      return plan.material().flatMap(library::material);
    }
    return thickness instanceof Thickness.Chosen chosen
        ? page(plan.construction(), chosen.millimetres())
        : Optional.empty();
  }

  private Optional<Page<Material>> page(RopeConstruction construction, double millimetres) {
    return ropes.stream()
        .filter(page -> is(page.details().rope().orElseThrow(), construction, millimetres))
        .findFirst();
  }

  private static boolean is(RopeKind kind, RopeConstruction construction, double millimetres) {
    OptionalDouble size = KnownUnit.MILLIMETRE.of(kind.diameter().quantity());
    return kind.construction() == construction
        && size.isPresent()
        && Math.abs(size.getAsDouble() - millimetres) < HAIR;
  }
}
