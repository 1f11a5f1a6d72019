package limberboard.drill;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import limberboard.boat.Boat;
import limberboard.boat.NotEntered;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * A boat made up from a model's choices: what the yard mostly fitted, and here and there another
 * choice of that year. Her id says all of her, so that an order with it needs no file.
 *
 * @param model her model
 * @param seed what chance comes from
 * @param latest the last year she may be built in
 */
public record MadeUpBoat(Page<Model> model, long seed, int latest) {
  private static final double AS_USUAL = 0.7;
  private static final int OLDEST = 15;

  /** Checks that there is a model. */
  public MadeUpBoat {
    Objects.requireNonNull(model);
  }

  /** The boat; the same seed makes the same one. */
  public Boat boat() {
    Drawing drawing = new Drawing(seed);
    int from = model.details().built().from().orElse(latest - OLDEST);
    int to = Math.max(from, Math.min(model.details().built().to().orElse(latest), latest));
    int year = from + (int) (drawing.number("year") * (to - from + 1));
    Map<String, String> fitted = new LinkedHashMap<>();
    for (Model.Equipment equipment : model.details().equipment()) {
      List<String> can = equipment.choicesFor(year).stream().map(Model.Choice::id).toList();
      if (!can.isEmpty() && !drawing.happens("as usual " + equipment.id(), AS_USUAL)) {
        fitted.put(equipment.id(), drawing.one("fitted " + equipment.id(), can));
      }
    }
    Water water = drawing.one("water", List.of(Water.values()));
    Use use =
        drawing.happens("private", AS_USUAL)
            ? Use.PRIVATE
            : drawing.one("use", List.of(Use.values()));
    return NotEntered.boat(model, year, fitted, water, use);
  }
}
