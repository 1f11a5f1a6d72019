package limberboard.letters.recognise;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.letters.mail.Letter;

/**
 * Who writes of which boat, from earlier letters: a file of its own, one {@code address: boat} a
 * line, that belongs to one desk and is never shared. Immutable.
 *
 * @param boats address in small letters to the boat's id
 */
public record Senders(Map<String, String> boats) {
  /** Nobody is known. */
  public static final Senders NONE = new Senders(Map.of());

  /** The file's name in the folder of letters. */
  public static final String FILE = "senders";

  /** Copies the map. */
  public Senders {
    boats = Map.copyOf(boats);
  }

  /**
   * Reads the file of a folder of letters; nobody is known where there is none.
   *
   * @throws IOException when it cannot be read
   */
  public static Senders read(Path letters) throws IOException {
    Path file = letters.resolve(FILE);
    if (!Files.isRegularFile(file)) {
      return NONE;
    }
    Map<String, String> boats = new HashMap<>();
    for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
      int colon = line.lastIndexOf(':');
      if (!line.startsWith("#") && colon > 0) {
        boats.put(
            line.substring(0, colon).strip().toLowerCase(Locale.ROOT),
            line.substring(colon + 1).strip());
      }
    }
    return new Senders(boats);
  }

  /** The boat that a letter's sender mostly writes of. */
  Optional<Boat> boat(Letter letter, List<Boat> known) {
    return letter
        .head()
        .from()
        .map(from -> boats.get(from.address().toLowerCase(Locale.ROOT)))
        .flatMap(id -> known.stream().filter(boat -> boat.id().equals(id)).findFirst());
  }
}
