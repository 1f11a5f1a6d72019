package limberboard.upkeep.shopping;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import limberboard.boat.Boat;

/**
 * Sums of materials made from the page files as they stand, with decimal arithmetic and a table of
 * units of its own; it shares no code with the program except the boat's facts.
 */
final class RawSums {
  private static final Map<String, BigDecimal> TO_BASE =
      Map.of(
          "mm", new BigDecimal("0.001"),
          "cm", new BigDecimal("0.01"),
          "m", BigDecimal.ONE,
          "m2", BigDecimal.ONE,
          "cm2", new BigDecimal("0.0001"),
          "ml", BigDecimal.ONE,
          "l", new BigDecimal("1000"),
          "g", BigDecimal.ONE,
          "kg", new BigDecimal("1000"));
  private static final BigDecimal ML_IN_CUBIC_METRE = new BigDecimal("1000000");

  private final Path articles;
  private final Boat boat;
  private final JsonNode model;

  private RawSums(Path articles, Boat boat) throws IOException {
    this.articles = articles;
    this.boat = boat;
    this.model = header(articles.resolve("models/" + boat.model().id() + ".md"));
  }

  /** Material id to its sum in the material's unit, for the jobs that are for this boat. */
  static Map<String, Double> of(Path articles, Boat boat, List<Job> jobs) throws IOException {
    RawSums raw = new RawSums(articles, boat);
    Map<String, BigDecimal> sums = new TreeMap<>();
    for (Job job : jobs) {
      JsonNode page = header(articles.resolve("procedures/" + job.work().id() + ".md"));
      if (!raw.fits(page.path("fits")) || page.path("skill").asText().equals("licensed")) {
        continue;
      }
      for (JsonNode use : page.path("materials")) {
        if (raw.fits(use.path("fits"))) {
          raw.amount(use)
              .map(amount -> amount.multiply(BigDecimal.valueOf(job.times())))
              .ifPresent(amount -> sums.merge(use.path("use").asText(), amount, BigDecimal::add));
        }
      }
    }
    Map<String, Double> doubles = new TreeMap<>();
    sums.forEach((id, sum) -> doubles.put(id, sum.doubleValue()));
    return doubles;
  }

  /** A quantity in millilitres, grams, metres or pieces. */
  static double counted(String text) {
    return value(text).doubleValue();
  }

  private static JsonNode header(Path file) throws IOException {
    String text = Files.readString(file);
    return new YAMLMapper().readTree(text.substring(4, text.indexOf("\n---\n")));
  }

  private Optional<BigDecimal> amount(JsonNode use) {
    if (use.has("bead")) {
      JsonNode bead = use.path("bead");
      return product(
          ML_IN_CUBIC_METRE, bead.path("length"), bead.path("width"), bead.path("depth"));
    }
    if (use.has("coat")) {
      JsonNode coat = use.path("coat");
      return product(ML_IN_CUBIC_METRE, coat.path("area"), coat.path("thickness"));
    }
    if (use.has("cord")) {
      JsonNode cord = use.path("cord");
      Optional<BigDecimal> count =
          cord.has("count")
              ? one(cord.path("count")).map(n -> n.setScale(0, RoundingMode.CEILING))
              : Optional.of(BigDecimal.ONE);
      return one(cord.path("length")).flatMap(length -> count.map(length::multiply));
    }
    if (use.has("pieces")) {
      return one(use.path("pieces")).map(n -> n.setScale(0, RoundingMode.CEILING));
    }
    return use.has("amount") ? one(use.path("amount")) : Optional.empty();
  }

  private Optional<BigDecimal> product(BigDecimal scale, JsonNode... factors) {
    BigDecimal product = scale;
    for (JsonNode factor : factors) {
      Optional<BigDecimal> value = one(factor);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      product = product.multiply(value.get());
    }
    return Optional.of(product);
  }

  private Optional<BigDecimal> one(JsonNode node) {
    if (node.isObject()) {
      BigDecimal times = new BigDecimal(node.path("times").asText("1"));
      return measure(node.path("measure").asText()).map(times::multiply);
    }
    String text = node.asText();
    return Character.isDigit(text.charAt(0)) ? Optional.of(value(text)) : measure(text);
  }

  private Optional<BigDecimal> measure(String name) {
    JsonNode measure = model.path("measures").path(name);
    return measure.isMissingNode() ? Optional.empty() : Optional.of(value(measure.asText()));
  }

  private static BigDecimal value(String text) {
    String[] parts = text.split(" ");
    BigDecimal number = new BigDecimal(parts[0]);
    return parts.length == 1 ? number : number.multiply(TO_BASE.get(parts[1].replace('²', '2')));
  }

  private boolean fits(JsonNode condition) {
    boolean fits = true;
    fits &= oneOf(condition.path("model"), boat.model().id());
    fits &= oneOf(condition.path("water"), boat.water().word());
    fits &= oneOf(condition.path("use"), boat.use().word());
    fits &= range(condition.path("built"), boat.built());
    fits &= range(condition.path("hull"), boat.hull());
    for (JsonNode choice : list(condition.path("fitted"))) {
      fits &= boat.equipment().containsValue(choice.asText());
    }
    for (JsonNode choice : list(condition.path("not-fitted"))) {
      fits &= !boat.equipment().containsValue(choice.asText());
    }
    if (condition.has("any")) {
      boolean any = false;
      for (JsonNode alternative : condition.path("any")) {
        any |= fits(alternative);
      }
      fits &= any;
    }
    if (condition.has("age")) {
      throw new IllegalStateException("the check does not know the key age");
    }
    return fits;
  }

  private static boolean oneOf(JsonNode words, String mine) {
    List<JsonNode> list = list(words);
    return list.isEmpty() || list.stream().anyMatch(word -> word.asText().equals(mine));
  }

  private static List<JsonNode> list(JsonNode node) {
    if (node.isMissingNode()) {
      return List.of();
    }
    if (!node.isArray()) {
      return List.of(node);
    }
    List<JsonNode> list = new java.util.ArrayList<>();
    node.forEach(list::add);
    return list;
  }

  private static boolean range(JsonNode node, int number) {
    if (node.isMissingNode()) {
      return true;
    }
    String[] ends = node.asText().split("/");
    int from = ends[0].equals("..") ? Integer.MIN_VALUE : Integer.parseInt(ends[0]);
    String last = ends[ends.length - 1];
    int to = last.equals("..") ? Integer.MAX_VALUE : Integer.parseInt(last);
    return number >= from && number <= to;
  }
}
