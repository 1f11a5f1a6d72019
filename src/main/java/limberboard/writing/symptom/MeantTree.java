package limberboard.writing.symptom;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Optional;

/** Changes what a header says, as a tree of texts, by places named as in its letters. */
final class MeantTree {
  private MeantTree() {}

  static Optional<JsonNode> at(JsonNode root, List<String> path) {
    JsonNode node = root;
    for (String key : path) {
      node = node.isArray() ? node.path(Integer.parseInt(key)) : node.path(key);
    }
    return node.isMissingNode() ? Optional.empty() : Optional.of(node);
  }

  private static List<String> above(List<String> path) {
    return path.subList(0, path.size() - 1);
  }

  private static String last(List<String> path) {
    return path.get(path.size() - 1);
  }

  static void set(ObjectNode root, List<String> path, String text) {
    put(root, path, TextNode.valueOf(text));
  }

  /** Puts a value in, with the mappings above it that are not there. */
  static void put(ObjectNode root, List<String> path, JsonNode value) {
    JsonNode node = root;
    for (String key : above(path)) {
      JsonNode next = node.isArray() ? node.path(Integer.parseInt(key)) : node.path(key);
      if (next.isMissingNode() && node instanceof ObjectNode parent) {
        next = parent.putObject(key);
      }
      node = next;
    }
    if (node instanceof ObjectNode parent) {
      parent.set(last(path), value);
    }
  }

  static void setUnlessEmpty(ObjectNode node, String key, String text) {
    if (!text.isEmpty()) {
      node.put(key, text);
    }
  }

  /** Takes a key out, and the mappings that are then empty. */
  static void remove(ObjectNode root, List<String> path) {
    if (at(root, above(path)).orElse(null) instanceof ObjectNode parent
        && parent.remove(last(path)) != null
        && parent.isEmpty()
        && path.size() > 1) {
      remove(root, above(path));
    }
  }

  /** Names a key otherwise; the order of keys says nothing. */
  static void rename(ObjectNode root, List<String> path, String name) {
    if (at(root, above(path)).orElse(null) instanceof ObjectNode parent && parent.has(last(path))) {
      parent.set(name, parent.remove(last(path)));
    }
  }

  static void add(ObjectNode root, List<String> list, ObjectNode entry) {
    Optional<JsonNode> there = at(root, list);
    if (there.orElse(null) instanceof ArrayNode many) {
      many.add(entry);
    } else {
      put(root, list, root.arrayNode().add(entry));
    }
  }
}
