package limberboard.library.header;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.Within;

/**
 * Compares the keys of a header with the components of the records it is to be bound to: unknown
 * keys and missing required ones, all the way down.
 */
final class HeaderShape {
  private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,40}");

  private final Report report;
  private boolean complete = true;

  HeaderShape(Report report) {
    this.report = report;
  }

  /** Compares a mapping with records that share its keys between them. */
  void compare(ObjectNode node, List<Class<? extends Record>> records, String path) {
    Map<String, HeaderKey> known = HeaderKey.of(records);
    List<String> refused = new ArrayList<>();
    for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      HeaderKey key = known.get(name);
      if (key == null) {
        report.error(
            path + "/" + name,
            "is not a key known here",
            Nearest.advice(name, known.keySet(), "known are " + String.join(", ", known.keySet())));
      } else if (isWithin(node.get(name), key, path + "/" + name)) {
        compare(node.get(name), key.type(), path + "/" + name);
      } else {
        refused.add(name);
      }
    }
    known.values().forEach(key -> requireKey(node, key, path));
    node.remove(refused);
  }

  /** Whether a number is within its bounds, or is for somebody else to judge. */
  private boolean isWithin(JsonNode value, HeaderKey key, String path) {
    Optional<Within> asked = key.within();
    if (asked.isEmpty() || !WHOLE.matcher(value.asText()).matches()) {
      return true;
    }
    Within bounds = asked.get();
    BigInteger number = new BigInteger(value.asText());
    boolean within =
        number.compareTo(BigInteger.valueOf(bounds.least())) >= 0
            && number.compareTo(BigInteger.valueOf(bounds.most())) <= 0;
    if (!within) {
      report.error(
          path,
          "is " + value.asText(),
          "write a whole number from " + bounds.least() + " to " + bounds.most());
    }
    return within;
  }

  /** Whether every required key is there. */
  boolean isComplete() {
    return complete;
  }

  private void requireKey(ObjectNode node, HeaderKey key, String path) {
    if (key.isRequired() && !node.has(key.name())) {
      report.error(path + "/" + key.name(), "is missing", "it is required here");
      complete = false;
    }
  }

  private void compare(JsonNode node, Type type, String path) {
    if (type instanceof ParameterizedType generic) {
      Type[] arguments = generic.getActualTypeArguments();
      Type inner = arguments[arguments.length - 1];
      if (generic.getRawType() == Optional.class) {
        compare(node, inner, path);
      } else if (generic.getRawType() == List.class && node.isArray()) {
        for (int i = 0; i < node.size(); i++) {
          compare(node.get(i), inner, path + "/" + i);
        }
      } else if (generic.getRawType() == Map.class && node.isObject()) {
        node.fieldNames()
            .forEachRemaining(name -> compare(node.get(name), inner, path + "/" + name));
      }
    } else if (type instanceof Class<?> plain
        && plain.isRecord()
        && node instanceof ObjectNode object) {
      compare(object, List.of(plain.asSubclass(Record.class)), path);
    }
  }
}
