package limberboard.boat;

import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import limberboard.library.Exposure;
import limberboard.library.Model;
import limberboard.library.SafeFiles;
import limberboard.library.Use;
import limberboard.library.Water;
import limberboard.library.WorkspaceFolders;

/**
 * Writes a boat's {@code boat.yaml}: whole or not at all. The log is left alone. What the yard
 * fitted anyway is not repeated.
 */
public final class BoatWriter {
  private final WorkspaceFolders folders;
  private final YAMLMapper yaml =
      new YAMLMapper(
          YAMLFactory.builder()
              .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
              .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
              .build());

  /** A writer for this workspace. */
  public BoatWriter(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * Writes a boat.
   *
   * @throws IOException when it cannot be written; what was there before is then still there
   */
  public void write(Boat boat) throws IOException {
    Path file = folders.boats().resolve(boat.id()).resolve(BoatReader.BOAT);
    SafeFiles.write(file, yaml.writeValueAsString(keys(boat)));
  }

  private static Map<String, Object> keys(Boat boat) {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("name", boat.name());
    keys.put("model", boat.model().id());
    keys.put("hull", boat.hull());
    keys.put("built", boat.built());
    boat.launched().ifPresent(day -> keys.put("launched", day.toString()));
    if (boat.use() != Use.PRIVATE) {
      keys.put("use", boat.use().word());
    }
    if (boat.water() != Water.SALT) {
      keys.put("water", boat.water().word());
    }
    if (boat.exposure() != Exposure.USUAL) {
      keys.put("exposure", boat.exposure().word());
    }
    Map<String, String> chosen = chosen(boat);
    if (!chosen.isEmpty()) {
      keys.put("equipment", chosen);
    }
    boat.season()
        .ifPresent(
            season ->
                keys.put(
                    "season",
                    Map.of("from", season.from().toString(), "to", season.to().toString())));
    boat.hourIsWorth().ifPresent(worth -> keys.put("hour-is-worth", worth));
    if (!boat.note().isEmpty()) {
      keys.put("note", boat.note());
    }
    return keys;
  }

  private static Map<String, String> chosen(Boat boat) {
    Map<String, String> chosen = new LinkedHashMap<>();
    for (Model.Equipment equipment : boat.model().details().equipment()) {
      String choice = boat.equipment().get(equipment.id());
      String usual = equipment.defaultFor(boat.built()).map(Model.Choice::id).orElse("");
      if (choice != null && !choice.equals(usual)) {
        chosen.put(equipment.id(), choice);
      }
    }
    return chosen;
  }
}
