package limberboard.rigging;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.RopeConstruction;

/**
 * What to ask for in the shop of one kind of rope.
 *
 * @param construction how it is made
 * @param millimetres its diameter
 * @param metres all pieces together
 * @param pieces the ropes cut from it
 * @param material its page, where there is one
 */
public record RopeTotal(
    RopeConstruction construction,
    double millimetres,
    double metres,
    List<Piece> pieces,
    Optional<Page<Material>> material) {

  /** Copies the list. */
  public RopeTotal {
    pieces = List.copyOf(pieces);
  }

  /**
   * Pieces of one rope.
   *
   * @param title the rope's title
   * @param count how many
   * @param metres length of each
   */
  public record Piece(String title, int count, double metres) {}
}
