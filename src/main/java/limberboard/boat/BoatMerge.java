package limberboard.boat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/**
 * Brings together what one person changed in a boat and what another wrote into its file meanwhile.
 *
 * @param merged the boat with both changes; where both changed the same, with the first person's
 * @param clashes the keys that both changed, each to something else, such as {@code
 *     equipment.stove}
 */
record BoatMerge(Boat merged, List<String> clashes) {

  /**
   * Brings changes together.
   *
   * @param base the boat from which the first person began
   * @param mine the boat as the first person wants it
   * @param theirs the boat as its file has it now
   */
  static BoatMerge of(Boat base, Boat mine, Boat theirs) {
    return new Picking(base, mine, theirs).merge();
  }

  private static final class Picking {
    private final Boat base;
    private final Boat mine;
    private final Boat theirs;
    private final List<String> clashes = new ArrayList<>();

    Picking(Boat base, Boat mine, Boat theirs) {
      this.base = base;
      this.mine = mine;
      this.theirs = theirs;
    }

    BoatMerge merge() {
      String modelId = pick("model", boat -> boat.model().id());
      Page<Model> model = modelId.equals(theirs.model().id()) ? theirs.model() : mine.model();
      Boat merged =
          new Boat(
              theirs.id(),
              pick("name", Boat::name),
              model,
              pick("hull", Boat::hull),
              pick("built", Boat::built),
              pick("launched", Boat::launched),
              pick("bought", Boat::bought),
              pick("use", Boat::use),
              pick("water", Boat::water),
              pick("exposure", Boat::exposure),
              equipment(model.details()),
              pick("season", Boat::season),
              pick("note", Boat::note),
              theirs.log());
      return new BoatMerge(merged, List.copyOf(clashes));
    }

    private <T> T pick(String key, Function<Boat, T> part) {
      T was = part.apply(base);
      T wanted = part.apply(mine);
      T there = part.apply(theirs);
      if (wanted.equals(was)) {
        return there;
      }
      if (!there.equals(was) && !there.equals(wanted)) {
        clashes.add(key);
      }
      return wanted;
    }

    private Map<String, String> equipment(Model model) {
      Map<String, String> equipment = new LinkedHashMap<>();
      for (Model.Equipment each : model.equipment()) {
        String choice =
            pick("equipment." + each.id(), boat -> boat.equipment().getOrDefault(each.id(), ""));
        if (!choice.isEmpty()) {
          equipment.put(each.id(), choice);
        }
      }
      return equipment;
    }
  }
}
