package limberboard.desktop.boats;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.library.page.Model;

/**
 * What somebody else wrote into a boat's file while the form was changed, where both changed the
 * same. Immutable.
 *
 * @param fields field to what the file has, in words; empty words for nothing
 * @param fitted equipment id to the title of what the file has
 */
public record Clashes(Map<Field, String> fields, Map<String, String> fitted) {
  /** Nobody else changed the same. */
  public static final Clashes NONE = new Clashes(Map.of(), Map.of());

  private static final String EQUIPMENT = "equipment.";

  /** Copies the maps. */
  public Clashes {
    fields = Map.copyOf(fields);
    fitted = Map.copyOf(fitted);
  }

  /** The clashes that saving came upon. */
  static Clashes of(BoatWriter.Clash clash) {
    Draft theirs = Draft.of(clash.theirs());
    Map<Field, String> fields = new EnumMap<>(Field.class);
    Map<String, String> fitted = new LinkedHashMap<>();
    for (String key : clash.keys()) {
      if (key.startsWith(EQUIPMENT)) {
        String id = key.substring(EQUIPMENT.length());
        fitted.put(id, title(clash.theirs(), id));
      } else {
        add(fields, key, theirs);
      }
    }
    return new Clashes(fields, fitted);
  }

  private static void add(Map<Field, String> fields, String key, Draft theirs) {
    switch (key) {
      case "season" -> {
        fields.put(Field.SEASON_FROM, theirs.text(Field.SEASON_FROM));
        fields.put(Field.SEASON_TO, theirs.text(Field.SEASON_TO));
      }
      default -> {
        Field field = Field.valueOf(key.toUpperCase(java.util.Locale.ROOT));
        fields.put(field, theirs.text(field));
      }
    }
  }

  private static String title(Boat boat, String equipment) {
    String choice = boat.equipment().getOrDefault(equipment, "");
    return boat.model()
        .details()
        .equipment(equipment)
        .flatMap(each -> each.choices().stream().filter(one -> one.id().equals(choice)).findFirst())
        .map(Model.Choice::title)
        .orElse("nothing");
  }

  /** What stands below a field that both changed; empty when it is none of them. */
  Optional<String> below(Field field, String now) {
    return Optional.ofNullable(fields.get(field))
        .filter(theirs -> !theirs.equals(now))
        .map(Clashes::inFile);
  }

  /** What stands below a choice that both changed; empty when it is none of them. */
  Optional<String> belowFitted(String equipment, String now) {
    return Optional.ofNullable(fitted.get(equipment))
        .filter(theirs -> !theirs.equals(now))
        .map(Clashes::inFile);
  }

  private static String inFile(String theirs) {
    return theirs.isEmpty()
        ? "Somebody else has emptied this in the file."
        : "Somebody else has written into the file: " + theirs;
  }

  /** What happened and what to do. */
  String sentence(String boat) {
    int all = fields.size() + fitted.size();
    return boat
        + " is not saved: somebody else changed "
        + (all == 1 ? "the same entry" : "some of the same entries")
        + " in the file meanwhile. Yours stand in the form, and what the file has stands below"
        + " each. Put right what is to hold, then save again.";
  }
}
