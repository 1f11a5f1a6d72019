package limberboard.desktop.boats;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Season;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.words.DayText;
import limberboard.words.TimeWords;

/**
 * What is in the form. Immutable.
 *
 * @param texts field to what stands in it; a field that is not there is empty
 * @param equipment equipment id to choice id
 */
public record Draft(Map<Field, String> texts, Map<String, String> equipment) {
  /** Copies the maps. */
  public Draft {
    Map<Field, String> copied = new EnumMap<>(Field.class);
    copied.putAll(texts);
    copied.values().removeIf(String::isEmpty);
    texts = Collections.unmodifiableMap(copied);
    equipment = Collections.unmodifiableMap(new LinkedHashMap<>(equipment));
  }

  /** The form of a new boat. */
  public static Draft blank() {
    return new Draft(
        Map.of(
            Field.USE,
            Use.PRIVATE.word(),
            Field.WATER,
            Water.SALT.word(),
            Field.EXPOSURE,
            Exposure.USUAL.word()),
        Map.of());
  }

  /** The form of a boat. */
  public static Draft of(Boat boat) {
    Map<Field, String> texts = new EnumMap<>(Field.class);
    texts.put(Field.NAME, boat.name());
    texts.put(Field.MODEL, boat.model().id());
    texts.put(Field.HULL, Integer.toString(boat.hull()));
    texts.put(Field.BUILT, Integer.toString(boat.built()));
    texts.put(Field.LAUNCHED, boat.launched().map(DayText::written).orElse(""));
    texts.put(Field.BOUGHT, boat.bought().map(DayText::written).orElse(""));
    texts.put(Field.USE, boat.use().word());
    texts.put(Field.WATER, boat.water().word());
    texts.put(Field.EXPOSURE, boat.exposure().word());
    texts.put(Field.SEASON_FROM, boat.season().map(Season::from).map(TimeWords::day).orElse(""));
    texts.put(Field.SEASON_TO, boat.season().map(Season::to).map(TimeWords::day).orElse(""));
    texts.put(Field.NOTE, boat.note());
    return new Draft(texts, boat.equipment());
  }

  /** What stands in a field. */
  public String text(Field field) {
    return texts.getOrDefault(field, "");
  }

  /** The whole number in a field, if one stands there. */
  public Optional<Integer> number(Field field) {
    try {
      return Optional.of(Integer.parseInt(text(field).strip()));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** The same with another text in a field. */
  public Draft with(Field field, String text) {
    Map<Field, String> changed = new EnumMap<>(Field.class);
    changed.putAll(texts);
    changed.put(field, text);
    return new Draft(changed, equipment);
  }

  /** The same with other equipment. */
  public Draft with(Map<String, String> chosen) {
    return new Draft(texts, chosen);
  }
}
