package limberboard.desktop.boats;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Season;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.words.DayText;

/** Makes boats of forms that have been checked. */
final class DraftBoat {
  private DraftBoat() {}

  /**
   * The boat.
   *
   * @param draft a form without problems
   * @param model its model
   * @param original the boat that was changed; empty for a new one
   * @param others all boats, whose ids are taken
   */
  static Boat of(Draft draft, Page<Model> model, Optional<Boat> original, List<Boat> others) {
    String name = draft.text(Field.NAME).strip();
    return new Boat(
        original.map(Boat::id).orElseGet(() -> freeId(name, others)),
        name,
        model,
        draft.number(Field.HULL).orElseThrow(),
        draft.number(Field.BUILT).orElseThrow(),
        DayText.withYear(draft.text(Field.LAUNCHED)),
        DayText.withYear(draft.text(Field.BOUGHT)),
        use(draft.text(Field.USE)),
        water(draft.text(Field.WATER)),
        exposure(draft.text(Field.EXPOSURE)),
        draft.equipment(),
        season(draft),
        draft.text(Field.NOTE).strip(),
        original.map(Boat::log).orElse(List.of()));
  }

  private static Use use(String word) {
    for (Use use : Use.values()) {
      if (use.word().equals(word)) {
        return use;
      }
    }
    return Use.PRIVATE;
  }

  private static Water water(String word) {
    for (Water water : Water.values()) {
      if (water.word().equals(word)) {
        return water;
      }
    }
    return Water.SALT;
  }

  private static Exposure exposure(String word) {
    for (Exposure exposure : Exposure.values()) {
      if (exposure.word().equals(word)) {
        return exposure;
      }
    }
    return Exposure.USUAL;
  }

  private static Optional<Season> season(Draft draft) {
    return DayText.monthDay(draft.text(Field.SEASON_FROM))
        .flatMap(
            from -> DayText.monthDay(draft.text(Field.SEASON_TO)).map(to -> new Season(from, to)));
  }

  /** A folder name made of the boat's name: small letters, digits, hyphens, and not yet taken. */
  static String freeId(String name, List<Boat> others) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    String base =
        plain.isEmpty() || plain.equals("cases") || plain.equals("letters") ? "boat" : plain;
    String id = base;
    for (int n = 2; isTaken(id, others); n++) {
      id = base + "-" + n;
    }
    return id;
  }

  private static boolean isTaken(String id, List<Boat> others) {
    return others.stream().anyMatch(boat -> boat.id().equals(id));
  }
}
