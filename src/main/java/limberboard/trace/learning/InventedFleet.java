package limberboard.trace.learning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.boat.Boat;
import limberboard.boat.NotEntered;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * Invented boats: any model that can have a symptom, any year it was built in, fitted as the yard
 * mostly did.
 *
 * @param library the models
 * @param chance where chance comes from
 */
record InventedFleet(Library library, Chance chance) {
  private static final double AS_USUAL = 0.7;

  /** A boat built no later than a year; a model not yet built by then has its first. */
  Boat boat(int latest) {
    Page<Model> model = chance.one(library.all(Model.class));
    int from = model.details().built().from().orElse(latest);
    int to = Math.min(model.details().built().to().orElse(latest), latest);
    return boat(model, from + chance.random().nextInt(Math.max(1, to - from + 1)));
  }

  /** A boat of a model and year. */
  Boat boat(Page<Model> model, int year) {
    Map<String, String> fitted = new LinkedHashMap<>();
    for (Model.Equipment equipment : model.details().equipment()) {
      List<String> can = equipment.choicesFor(year).stream().map(Model.Choice::id).toList();
      if (!can.isEmpty() && !chance.happens(AS_USUAL)) {
        fitted.put(equipment.id(), chance.one(can));
      }
    }
    Water water = chance.one(List.of(Water.values()), each -> each == Water.SALT ? 3 : 1);
    Use use = chance.one(List.of(Use.values()), each -> each == Use.PRIVATE ? 7 : 1);
    return NotEntered.boat(model, year, fitted, water, use);
  }
}
