package limberboard.library.picture;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Bounds what an SVG drawing may ask of whoever paints it, before anything is painted. A drawing
 * made for a page stays far below; a file of a few bytes made to exhaust a machine does not. The
 * figures are in {@code docs/file-formats.md}. For one drawing, on one thread.
 */
final class DrawingLimits {
  /** The most elements a drawing may have. */
  static final int MOST_ELEMENTS = 20_000;

  /** The most elements it may come to with all that it uses again. */
  static final long MOST_PAINTED = 200_000;

  /** The longest chain of things that use one another. */
  static final int LONGEST_CHAIN = 16;

  /** The greatest coordinate or length, in user units. */
  static final double FARTHEST = 100_000;

  /** The greatest width and height of the drawing, in user units. */
  static final double LARGEST_SIDE = 10_000;

  /** The largest letters, line widths, marks and pattern tiles, in user units. */
  static final double LARGEST_PART = 1_000;

  /** The shortest pattern tile and dash, in user units. */
  static final double LEAST_PART = 0.5;

  /** How much a drawing may be scaled up within itself, all scales taken together. */
  static final double LARGEST_SCALE = 100;

  private static final Set<String> PIXELS = Set.of("filter", "mask", "image", "feimage");
  private static final Set<String> LENGTHS =
      Set.of(
          "x",
          "y",
          "x1",
          "y1",
          "x2",
          "y2",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "fx",
          "fy",
          "width",
          "height",
          "d",
          "points",
          "transform",
          "viewbox",
          "dx",
          "dy",
          "refx",
          "refy",
          "textlength",
          "letter-spacing",
          "word-spacing",
          "stroke-dashoffset",
          "gradienttransform",
          "patterntransform",
          "stroke-miterlimit");
  private static final Set<String> PARTS =
      Set.of("font-size", "stroke-width", "markerwidth", "markerheight");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d++\\.?\\d*+|\\.\\d++)(?:[eE][-+]?\\d++)?+");
  private static final Pattern SCALE = Pattern.compile("(?:scale|matrix)\\s*+\\(([^)]*+)\\)");
  private static final Pattern REFERENCE = Pattern.compile("url\\(\\s*+['\"]?+#([^'\")\\s]++)");

  private final List<Element> all = new ArrayList<>();
  private final Map<String, Element> named = new HashMap<>();
  private final Deque<Element> open = new ArrayDeque<>();

  /** An element: what is in it, and what it uses again and how often. */
  private static final class Element {
    private final List<Element> inner = new ArrayList<>();
    private final Map<String, Integer> uses = new HashMap<>();
    private final double scale;
    private long painted = -1;
    private boolean counting;

    Element(double scale) {
      this.scale = scale;
    }
  }

  /**
   * Takes the beginning of an element.
   *
   * @param name its name, in small letters
   * @param attributes its attributes, with names in small letters
   * @return what is wrong with it
   */
  Optional<String> started(String name, Map<String, String> attributes) {
    if (PIXELS.contains(name)) {
      return Optional.of("has a <" + name + ">, which turns lines into pixels; draw it without");
    }
    if (all.size() >= MOST_ELEMENTS) {
      return Optional.of("has more than " + MOST_ELEMENTS + " elements");
    }
    Map<String, String> said = withStyle(attributes);
    Element element = new Element((open.isEmpty() ? 1 : open.peek().scale) * scale(said));
    if (!open.isEmpty()) {
      open.peek().inner.add(element);
    }
    all.add(element);
    open.push(element);
    if (said.containsKey("id")) {
      named.put(said.get("id"), element);
    }
    references(said, element);
    if (element.scale > LARGEST_SCALE) {
      return Optional.of(
          "scales a part more than " + (int) LARGEST_SCALE + " times; draw it in its own size");
    }
    return sizes(name, said);
  }

  /** Takes the end of an element. */
  void ended() {
    open.pop();
  }

  /** What is wrong with the drawing as a whole. */
  Optional<String> finished() {
    return all.isEmpty() ? Optional.empty() : painted(all.get(0), 0);
  }

  private static Map<String, String> withStyle(Map<String, String> attributes) {
    if (!attributes.containsKey("style")) {
      return attributes;
    }
    Map<String, String> said = new HashMap<>(attributes);
    for (String declaration : attributes.get("style").split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        said.put(
            declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT),
            declaration.substring(colon + 1).strip());
      }
    }
    return said;
  }

  private static double scale(Map<String, String> said) {
    double scale = 1;
    for (String key : List.of("transform", "patterntransform")) {
      Matcher found = SCALE.matcher(said.getOrDefault(key, ""));
      while (found.find()) {
        List<Double> numbers = numbers(found.group(1));
        scale *= numbers.stream().limit(4).mapToDouble(Math::abs).max().orElse(1);
      }
    }
    return Math.max(scale, 1e-6);
  }

  private static void references(Map<String, String> said, Element element) {
    int points = Math.max(1, corners(said));
    said.forEach(
        (key, value) -> {
          if (key.equals("href") && value.startsWith("#")) {
            element.uses.merge(value.substring(1), 1, Integer::sum);
          }
          Matcher found = REFERENCE.matcher(value);
          while (found.find()) {
            element.uses.merge(found.group(1), key.startsWith("marker") ? points : 1, Integer::sum);
          }
        });
  }

  private static int corners(Map<String, String> said) {
    String line = said.getOrDefault("d", said.getOrDefault("points", ""));
    int numbers = 0;
    Matcher found = NUMBER.matcher(line);
    while (found.find()) {
      numbers++;
    }
    return numbers / 2;
  }

  private static Optional<String> sizes(String name, Map<String, String> said) {
    for (Map.Entry<String, String> each : said.entrySet()) {
      String key = each.getKey();
      if (LENGTHS.contains(key) && beyond(each.getValue(), FARTHEST)) {
        return Optional.of("has a " + key + " beyond " + (int) FARTHEST);
      }
      if (PARTS.contains(key) && beyond(each.getValue(), LARGEST_PART)) {
        return Optional.of("has a " + key + " over " + (int) LARGEST_PART);
      }
      if (key.equals("stroke-dasharray") && isTooFine(each.getValue())) {
        return Optional.of("has dashes shorter than " + LEAST_PART);
      }
    }
    if (name.equals("svg")) {
      return sides(said);
    }
    return name.equals("pattern") ? tile(said) : Optional.empty();
  }

  private static Optional<String> sides(Map<String, String> said) {
    List<Double> box = numbers(said.getOrDefault("viewbox", ""));
    boolean wide =
        box.size() == 4 && Math.max(box.get(2), box.get(3)) > LARGEST_SIDE
            || beyond(said.getOrDefault("width", ""), LARGEST_SIDE)
            || beyond(said.getOrDefault("height", ""), LARGEST_SIDE);
    return wide ? Optional.of("is wider or higher than " + (int) LARGEST_SIDE) : Optional.empty();
  }

  private static Optional<String> tile(Map<String, String> said) {
    boolean inUnits = said.getOrDefault("patternunits", "").equals("userSpaceOnUse");
    double least = inUnits ? LEAST_PART : 0.01;
    double most = inUnits ? LARGEST_PART : 1;
    for (String side : List.of("width", "height")) {
      List<Double> numbers = numbers(said.getOrDefault(side, ""));
      boolean share = said.getOrDefault(side, "").endsWith("%");
      if (!numbers.isEmpty()
          && !(numbers.get(0) >= least && numbers.get(0) <= (share ? 100 : most))) {
        return Optional.of("has a pattern whose " + side + " is not from " + least + " to " + most);
      }
    }
    return Optional.empty();
  }

  private static boolean isTooFine(String dashes) {
    List<Double> lengths = numbers(dashes);
    double sum = lengths.stream().mapToDouble(Math::abs).sum();
    return !lengths.isEmpty() && sum > 0 && sum < LEAST_PART;
  }

  private static boolean beyond(String text, double most) {
    return numbers(text).stream().anyMatch(number -> !(Math.abs(number) <= most));
  }

  private static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    Matcher found = NUMBER.matcher(text);
    while (found.find()) {
      numbers.add(Double.parseDouble(found.group()));
    }
    return numbers;
  }

  /** Counts what an element comes to; what is wrong with it, if anything is. */
  private Optional<String> painted(Element element, int chain) {
    if (element.counting) {
      return Optional.of("has a part that uses itself");
    }
    if (element.painted >= 0) {
      return Optional.empty();
    }
    if (chain > LONGEST_CHAIN) {
      return Optional.of("uses parts of parts more than " + LONGEST_CHAIN + " deep");
    }
    element.counting = true;
    long sum = 1;
    for (Element inner : element.inner) {
      Optional<String> wrong = painted(inner, chain);
      if (wrong.isPresent()) {
        return wrong;
      }
      sum += inner.painted;
    }
    for (Map.Entry<String, Integer> use : element.uses.entrySet()) {
      Element used = named.get(use.getKey());
      if (used != null) {
        Optional<String> wrong = painted(used, chain + 1);
        if (wrong.isPresent()) {
          return wrong;
        }
        sum += used.painted * use.getValue();
      }
    }
    element.counting = false;
    element.painted = sum;
    return sum > MOST_PAINTED
        ? Optional.of("comes to more than " + MOST_PAINTED + " elements with all it uses again")
        : Optional.empty();
  }
}
