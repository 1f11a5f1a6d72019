package limberboard.rigging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
   * @param ends how its ends are finished
   */
  public record Piece(String title, int count, double metres, String ends) {}

  /**
   * What these ropes take, by construction and diameter. Ropes with an open length or diameter are
   * not in it.
   */
  public static List<RopeTotal> of(List<Rope> ropes) {
    Map<Stuff, List<Rope>> kinds = new LinkedHashMap<>();
    for (Rope rope : ropes) {
      if (rope.isReckoned() && rope.thickness() instanceof Thickness.Chosen chosen) {
        Stuff stuff = new Stuff(rope.construction(), chosen.millimetres());
        kinds.computeIfAbsent(stuff, key -> new ArrayList<>()).add(rope);
      }
    }
    return kinds.entrySet().stream()
        .sorted(
            Map.Entry.comparingByKey(
                Comparator.comparing(Stuff::construction).thenComparing(Stuff::millimetres)))
        .map(entry -> total(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** A kind of rope. */
  private record Stuff(RopeConstruction construction, double millimetres) {}

  private static RopeTotal total(Stuff stuff, List<Rope> ropes) {
    List<Piece> pieces = new ArrayList<>();
    double metres = 0;
    for (Rope rope : ropes) {
      if (rope.length() instanceof RopeLength.Cut cut) {
        pieces.add(new Piece(rope.title(), rope.count(), cut.cut(), rope.endWords()));
        metres += rope.count() * cut.cut();
      }
    }
    return new RopeTotal(
        stuff.construction(), stuff.millimetres(), metres, pieces, ropes.get(0).material());
  }
}
