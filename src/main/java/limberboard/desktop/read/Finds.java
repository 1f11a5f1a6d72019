package limberboard.desktop.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.desktop.read.LaidOutText.Part;

/**
 * Where words stand in a page, and which of these places is looked at. Immutable.
 *
 * @param places all of them, in order
 * @param at which is looked at, from 0; without meaning when there are none
 */
record Finds(List<Part> places, int at) {
  /** Nothing. */
  static final Finds NONE = new Finds(List.of(), 0);

  Finds {
    places = List.copyOf(places);
  }

  /**
   * Finds words, whatever their capitals, over the ends of lines as well.
   *
   * @param page the page
   * @param words what is looked for; nothing is found by blank words
   * @param from the first place from here on is looked at, or else the very first
   */
  static Finds of(LaidOutText page, String words, int from) {
    if (words.isBlank()) {
      return NONE;
    }
    String[] parts = words.strip().split("[\\s\\u00a0]+");
    StringBuilder pattern = new StringBuilder();
    for (String part : parts) {
      pattern.append(pattern.isEmpty() ? "" : "[\\s\\u00a0]+").append(Pattern.quote(part));
    }
    Matcher matcher =
        Pattern.compile(pattern.toString(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
            .matcher(page.text());
    List<Part> places = new ArrayList<>();
    int at = -1;
    while (matcher.find()) {
      if (at < 0 && matcher.start() >= from) {
        at = places.size();
      }
      places.add(new Part(matcher.start(), matcher.end()));
    }
    return new Finds(places, Math.max(0, at));
  }

  /** The place that is looked at. */
  Optional<Part> now() {
    return places.isEmpty() ? Optional.empty() : Optional.of(places.get(at));
  }

  /** The next place (1) or the one before (-1), in a circle. */
  Finds step(int by) {
    return places.isEmpty() ? this : new Finds(places, Math.floorMod(at + by, places.size()));
  }

  /** How many there are, in words. */
  String words() {
    return places.isEmpty() ? "Not on this page" : at + 1 + " of " + places.size();
  }
}
