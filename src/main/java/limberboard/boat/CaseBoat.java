package limberboard.boat;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.library.Library;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * What a recorded case keeps of the boat: facts, and no name unless somebody chose to keep it.
 *
 * @param model model id
 * @param built year of building, if known
 * @param equipment equipment id to choice id, where it is not what the yard usually fitted
 * @param water where she lies, if known
 * @param use what she is used for, if known
 * @param id the boat's id, only where it was kept on purpose
 */
public record CaseBoat(
    String model,
    OptionalInt built,
    Map<String, String> equipment,
    Optional<Water> water,
    Optional<Use> use,
    Optional<String> id) {
  /** Copies the equipment. */
  public CaseBoat {
    equipment = Collections.unmodifiableMap(new LinkedHashMap<>(equipment));
  }

  /** A boat of which only the model and perhaps the year are known. */
  public static CaseBoat of(String model, OptionalInt built) {
    return new CaseBoat(
        model, built, Map.of(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The facts of a boat.
   *
   * @param kept whether her id is kept too
   */
  public static CaseBoat of(Boat boat, boolean kept) {
    Map<String, String> usual = boat.model().details().usualEquipment(boat.built());
    Map<String, String> other = new LinkedHashMap<>(boat.equipment());
    other.entrySet().removeAll(usual.entrySet());
    return new CaseBoat(
        boat.model().id(),
        OptionalInt.of(boat.built()),
        other,
        Optional.of(boat.water()),
        Optional.of(boat.use()),
        kept && boat.isEntered() ? Optional.of(boat.id()) : Optional.empty());
  }

  /**
   * A boat with these facts, otherwise as the yard fitted her; salt water and private use where
   * they are not known.
   *
   * @return empty when the model or the year is not known
   */
  public Optional<Boat> boat(Library library) {
    return built.isEmpty()
        ? Optional.empty()
        : library
            .model(model)
            .map(
                page ->
                    NotEntered.boat(
                        page,
                        built.getAsInt(),
                        equipment,
                        water.orElse(Water.SALT),
                        use.orElse(Use.PRIVATE)));
  }
}
