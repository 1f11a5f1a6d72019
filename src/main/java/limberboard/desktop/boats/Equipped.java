package limberboard.desktop.boats;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.Model;
import limberboard.library.Model.Choice;
import limberboard.library.Model.Equipment;

/**
 * What can be fitted to the boat of a form: what its model had in the year it was built.
 *
 * @param library the models
 */
record Equipped(Library library) {

  /** The equipment of the form's model that could be had in its year, in the model's order. */
  List<Equipment> choices(Draft draft) {
    Optional<Integer> year = draft.number(Field.BUILT);
    return model(draft).map(Model::equipment).orElse(List.of()).stream()
        .map(
            equipment ->
                new Equipment(
                    equipment.id(),
                    equipment.title(),
                    year.map(equipment::choicesFor).orElse(equipment.choices())))
        .filter(equipment -> !equipment.choices().isEmpty())
        .toList();
  }

  private Optional<Model> model(Draft draft) {
    return library.model(draft.text(Field.MODEL)).map(page -> page.details());
  }

  /** The form with its equipment put right: what could not be had becomes what the yard fitted. */
  Draft putRight(Draft draft) {
    Map<String, String> right = new LinkedHashMap<>();
    Optional<Integer> year = draft.number(Field.BUILT);
    for (Equipment equipment : choices(draft)) {
      List<String> ids = equipment.choices().stream().map(Choice::id).toList();
      String now = draft.equipment().get(equipment.id());
      if (now != null && ids.contains(now)) {
        right.put(equipment.id(), now);
      } else {
        right.put(
            equipment.id(), year.flatMap(equipment::defaultFor).map(Choice::id).orElse(ids.get(0)));
      }
    }
    return draft.with(right);
  }
}
