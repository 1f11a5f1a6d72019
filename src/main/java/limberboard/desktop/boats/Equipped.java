package limberboard.desktop.boats;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Model.Equipment;

/**
 * What can be fitted to the boat of a form: what its model had in the year it was built, and what
 * came after that and may have been fitted later.
 *
 * @param library the models
 */
record Equipped(Library library) {

  /** The equipment that can be on the form's boat, in the model's order. */
  List<Equipment> choices(Draft draft) {
    return choices(draft, Equipment::fittable);
  }

  private List<Equipment> choices(Draft draft, BiFunction<Equipment, Integer, List<Choice>> had) {
    Optional<Integer> year = year(draft);
    return model(draft).map(Model::equipment).orElse(List.of()).stream()
        .map(
            equipment ->
                new Equipment(
                    equipment.id(),
                    equipment.title(),
                    year.map(built -> had.apply(equipment, built)).orElse(equipment.choices())))
        .filter(equipment -> !equipment.choices().isEmpty())
        .toList();
  }

  private Optional<Model> model(Draft draft) {
    return library.model(draft.text(Field.MODEL)).map(page -> page.details());
  }

  /** The year in the form, when the model was built in it. */
  private Optional<Integer> year(Draft draft) {
    return draft
        .number(Field.BUILT)
        .filter(year -> model(draft).filter(model -> model.built().contains(year)).isPresent());
  }

  /** Whether a choice came only after the form's boat was built, so that it was fitted later. */
  boolean isLater(Draft draft, Equipment equipment, Choice choice) {
    return year(draft).filter(built -> equipment.laterThan(built).contains(choice)).isPresent();
  }

  /**
   * The form with its equipment put right: what cannot be on her becomes what the yard fitted.
   * Where her year is not known yet, nothing is taken for fitted that nobody chose.
   */
  Draft putRight(Draft draft) {
    return putRight(draft, choices(draft));
  }

  /**
   * The form for another model or year: its equipment is as such a boat was built. In a year in
   * which the model was not built, which may be half typed, it stays as it is.
   */
  Draft asBuilt(Draft draft) {
    return model(draft).isPresent()
            && draft.number(Field.BUILT).isPresent()
            && year(draft).isEmpty()
        ? putRight(draft, choices(draft))
        : putRight(draft, choices(draft, Equipment::choicesFor));
  }

  private Draft putRight(Draft draft, List<Equipment> fittable) {
    Map<String, String> right = new LinkedHashMap<>();
    Optional<Integer> year = year(draft);
    for (Equipment equipment : fittable) {
      List<String> ids = equipment.choices().stream().map(Choice::id).toList();
      String now = draft.equipment().get(equipment.id());
      if (now != null && ids.contains(now)) {
        right.put(equipment.id(), now);
      } else if (year.isPresent()) {
        right.put(
            equipment.id(), equipment.defaultFor(year.get()).map(Choice::id).orElse(ids.get(0)));
      }
    }
    return draft.with(right);
  }
}
