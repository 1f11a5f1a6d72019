package limberboard.writing.symptom;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.header.NestedYaml;
import limberboard.library.header.YamlScalar;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.header.YamlTree;
import limberboard.writing.PageText;

/**
 * A header in the making: its letters, and beside them what they are meant to say. In the end the
 * letters are read again, and both must agree. Immutable but for {@code meant}, which is its own.
 *
 * @param before the page before anything was changed
 * @param letters the header's YAML now
 * @param meant what it is to say
 */
record HeaderChange(PageText before, String letters, ObjectNode meant) {
  /** Nothing changed yet. */
  static HeaderChange of(PageText page, ObjectNode root) {
    String header = page.header().orElseThrow().of(page.text());
    return new HeaderChange(page, header, root.deepCopy());
  }

  private HeaderChange now(String letters) {
    return new HeaderChange(before, letters, meant);
  }

  private NestedYaml yaml() throws Unchangeable {
    return new NestedYaml(letters);
  }

  /** A text at a place, in the quotes that stand there; an empty one takes the key out. */
  HeaderChange set(List<String> path, String text) throws Unchangeable {
    if (text.isEmpty()) {
      MeantTree.remove(meant, path);
      return now(yaml().without(path));
    }
    MeantTree.set(meant, path, text);
    NestedYaml yaml = yaml();
    return now(yaml.with(path, YamlScalar.alike(yaml.written(path).orElse(""), text)));
  }

  /** A list of words at a place, on one line. */
  HeaderChange list(List<String> path, List<String> words) throws Unchangeable {
    ArrayNode list = meant.arrayNode();
    words.forEach(list::add);
    MeantTree.put(meant, path, list);
    return now(yaml().with(path, flow(words)));
  }

  private static String flow(List<String> words) {
    return "[" + String.join(", ", words.stream().map(YamlScalar::value).toList()) + "]";
  }

  /** Another word in a list, where the list is there and has it. */
  HeaderChange replaceIn(List<String> path, String old, String word) throws Unchangeable {
    Optional<JsonNode> list = MeantTree.at(meant, path).filter(JsonNode::isArray);
    if (list.isEmpty()) {
      return this;
    }
    List<String> words =
        java.util.stream.StreamSupport.stream(list.get().spliterator(), false)
            .map(each -> each.asText().equals(old) ? word : each.asText())
            .toList();
    return words.contains(word) ? list(path, words) : this;
  }

  /** Another name for a key, where it is there. */
  HeaderChange rename(List<String> path, String name) throws Unchangeable {
    MeantTree.rename(meant, path, name);
    return now(yaml().renamed(path, name));
  }

  /**
   * A further entry at the end of a list.
   *
   * @param entry its keys and texts
   * @param empty its keys that are lists, empty as yet
   */
  HeaderChange add(List<String> list, Map<String, String> entry, List<String> empty)
      throws Unchangeable {
    ObjectNode said = meant.objectNode();
    entry.forEach((key, text) -> MeantTree.setUnlessEmpty(said, key, text));
    Map<String, String> lines = new java.util.LinkedHashMap<>();
    entry.forEach((key, text) -> lines.put(key, text.isEmpty() ? "" : YamlScalar.value(text)));
    empty.forEach(
        key -> {
          said.putArray(key);
          lines.put(key, "[]");
        });
    MeantTree.add(meant, list, said);
    return now(yaml().withEntry(list, lines));
  }

  /** Without an entry of a list. */
  HeaderChange remove(List<String> list, int index) throws Unchangeable {
    MeantTree.at(meant, list).ifPresent(found -> ((ArrayNode) found).remove(index));
    return now(yaml().withoutEntry(list, index));
  }

  /**
   * The page with the change.
   *
   * @throws Unchangeable when the letters do not say what was meant, or no longer end where they
   *     ended
   */
  PageText page() throws Unchangeable {
    YamlTree read = YamlTree.read("", letters, 1);
    PageText page = before.withHeader(letters);
    boolean parted = page.header().filter(at -> at.of(page.text()).equals(letters)).isPresent();
    if (!parted || !read.report().isEmpty() || !read.root().equals(meant)) {
      throw new Unchangeable(
          "This cannot be written there without changing something else. Change it in the header.");
    }
    return page;
  }
}
