package limberboard.library.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.library.header.YamlText.Unchangeable;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A YAML text in which values at any depth are changed in their place: keys of mappings within
 * lists within mappings, and entries of lists. Everything else stays to the letter. Places are
 * named by keys, and by numbers from 0 in lists. Immutable; for one thread.
 */
public final class NestedYaml {
  private static final String STEP = "  ";
  private final YamlText yaml;
  private final Node root;

  /**
   * Reads a text.
   *
   * @throws Unchangeable when it cannot be read as keys and values
   */
  public NestedYaml(String text) throws Unchangeable {
    yaml = new YamlText(text);
    root = yaml.node(List.of()).orElseThrow();
  }

  private Optional<Node> at(List<String> path) {
    return YamlText.within(root, path);
  }

  /** The letters of a value; empty when it is not there. */
  public Optional<String> written(List<String> path) {
    return at(path).map(node -> yaml.text().substring(yaml.start(node), yaml.end(node)));
  }

  /**
   * The text with another value, on one line, already written as YAML. Where the key, or mappings
   * above it, are not there yet, they are put in.
   *
   * @throws Unchangeable when something in its way is no mapping
   */
  public String with(List<String> path, String value) throws Unchangeable {
    Optional<Node> there = at(path);
    if (there.isPresent()) {
      return replaced(there.get(), value);
    }
    int depth = path.size() - 1;
    while (depth > 0 && at(path.subList(0, depth)).filter(NestedYaml::holds).isEmpty()) {
      depth--;
    }
    Node above = at(path.subList(0, depth)).orElseThrow();
    if (!(above instanceof MappingNode mapping)) {
      throw new Unchangeable(path.get(depth) + " cannot be put in there");
    }
    List<String> below = path.subList(depth + 1, path.size());
    Optional<Node> empty = at(path.subList(0, depth + 1));
    if (empty.isPresent()) {
      return replaced(empty.get(), flow(below, value));
    }
    String key = path.get(depth);
    if (isFlow(mapping) || below.size() < 2) {
      return yaml.added(mapping, key, flow(below, value), List.of()).text();
    }
    String indent = " ".repeat(mapping.getValue().get(0).getKeyNode().getStartMark().getColumn());
    String line = YamlScalar.word(below.get(0)) + ": ";
    String nested = line + flow(below.subList(1, below.size()), value);
    return yaml.added(mapping, key, yaml.lineEnd() + indent + STEP + nested, List.of()).text();
  }

  /** Whether it holds keys or entries; what stands with nothing behind it does not. */
  private static boolean holds(Node node) {
    return node instanceof CollectionNode<?>;
  }

  private static boolean isFlow(Node node) {
    return node instanceof CollectionNode<?> many && many.getFlowStyle() == FlowStyle.FLOW;
  }

  private static String flow(List<String> keys, String value) {
    String all = value;
    for (int i = keys.size() - 1; i >= 0; i--) {
      all = "{" + YamlScalar.word(keys.get(i)) + ": " + all + "}";
    }
    return all;
  }

  private String replaced(Node old, String value) {
    int from = yaml.start(old);
    boolean glued = from > 0 && yaml.text().charAt(from - 1) == ':';
    return yaml.with(from, yaml.end(old), (glued ? " " : "") + value).text();
  }

  /**
   * The text without a key; a mapping that would be left empty goes with its last key. Without
   * effect when the key is not there.
   */
  public String without(List<String> path) throws Unchangeable {
    int last = path.size() - 1;
    Optional<Node> parent = at(path.subList(0, last));
    int index = parent.isPresent() ? index(parent.get(), path.get(last)) : -1;
    if (index < 0) {
      return yaml.text();
    }
    List<NodeTuple> tuples = ((MappingNode) parent.get()).getValue();
    if (tuples.size() == 1 && last > 0) {
      return without(path.subList(0, last));
    }
    int from = yaml.start(tuples.get(index).getKeyNode());
    int to = yaml.end(tuples.get(index).getValueNode());
    if (isFlow(parent.get())) {
      return index + 1 < tuples.size()
          ? yaml.with(from, yaml.start(tuples.get(index + 1).getKeyNode()), "").text()
          : yaml.with(index == 0 ? from : yaml.end(tuples.get(index - 1).getValueNode()), to, "")
              .text();
    }
    if (!yaml.text().substring(yaml.lineOf(from), from).isBlank()) {
      throw new Unchangeable("the key " + path.get(last) + " does not stand on a line of its own");
    }
    return yaml.with(yaml.lineOf(from), yaml.lineAfter(to), "").text();
  }

  private static int index(Node node, String key) {
    if (node instanceof MappingNode mapping) {
      for (int i = 0; i < mapping.getValue().size(); i++) {
        if (mapping.getValue().get(i).getKeyNode() instanceof ScalarNode name
            && name.getValue().equals(key)) {
          return i;
        }
      }
    }
    return -1;
  }

  /** The text with another name for a key; without effect when the key is not there. */
  public String renamed(List<String> path, String name) {
    int last = path.size() - 1;
    Optional<Node> parent = at(path.subList(0, last));
    int index = parent.isPresent() ? index(parent.get(), path.get(last)) : -1;
    return index < 0
        ? yaml.text()
        : replaced(
            ((MappingNode) parent.get()).getValue().get(index).getKeyNode(), YamlScalar.word(name));
  }

  /**
   * The text with a further entry at the end of a list of mappings; the list is put in where it is
   * not there.
   *
   * @param entry keys with their values, on one line each, already written as YAML
   */
  public String withEntry(List<String> list, Map<String, String> entry) throws Unchangeable {
    Optional<Node> there = at(list);
    if (there.isEmpty() || !(there.get() instanceof SequenceNode many)) {
      boolean empty = there.isEmpty() || written(list).orElse("").isEmpty();
      if (!empty) {
        throw new Unchangeable(list.get(list.size() - 1) + " is no list");
      }
      return with(list, "[" + flow(entry) + "]");
    }
    if (many.getValue().isEmpty()) {
      return begun(many, entry);
    }
    Node last = many.getValue().get(many.getValue().size() - 1);
    int end = yaml.end(last);
    if (isFlow(many)) {
      return yaml.with(end, end, ", " + flow(entry)).text();
    }
    int start = yaml.start(last);
    String before = yaml.text().substring(yaml.lineOf(start), start);
    if (!before.strip().equals("-")) {
      throw new Unchangeable("its entries do not stand on lines of their own");
    }
    return onLineAfter(end, lines(entry, before));
  }

  /**
   * The text with a further word at the end of a list, whose entries may be words or mappings; the
   * list is put in where it is not there.
   *
   * @param word already written as YAML, on one line
   */
  public String withWord(List<String> list, String word) throws Unchangeable {
    Optional<Node> there = at(list);
    if (there.isEmpty() || !(there.get() instanceof SequenceNode many)) {
      if (!written(list).orElse("").isEmpty()) {
        throw new Unchangeable(list.get(list.size() - 1) + " is no list");
      }
      return with(list, "[" + word + "]");
    }
    if (many.getValue().isEmpty()) {
      return yaml.with(yaml.start(many), yaml.end(many), "[" + word + "]").text();
    }
    Node last = many.getValue().get(many.getValue().size() - 1);
    int end = yaml.end(last);
    if (isFlow(many)) {
      return yaml.with(end, end, ", " + word).text();
    }
    int start = yaml.start(last);
    String before = yaml.text().substring(yaml.lineOf(start), start);
    if (!before.strip().equals("-")) {
      throw new Unchangeable("its entries do not stand on lines of their own");
    }
    return onLineAfter(end, before + word);
  }

  private String onLineAfter(int end, String line) {
    int next = yaml.lineAfter(end);
    boolean open = next == yaml.text().length() && !yaml.text().endsWith("\n");
    return yaml.with(next, next, open ? yaml.lineEnd() + line : line + yaml.lineEnd()).text();
  }

  /** A list on lines in the place of an empty one, where that ends its line. */
  private String begun(SequenceNode empty, Map<String, String> entry) {
    int from = yaml.start(empty);
    int to = yaml.end(empty);
    String behind = yaml.text().substring(to, yaml.lineAfter(to));
    String key = yaml.text().substring(yaml.lineOf(from), from);
    boolean onLines = behind.isBlank() && key.matches("[\\w-]+: *");
    return onLines
        ? yaml.with(
                from - (key.length() - key.stripTrailing().length()),
                to,
                yaml.lineEnd() + lines(entry, STEP + "- "))
            .text()
        : yaml.with(from, to, "[" + flow(entry) + "]").text();
  }

  private String lines(Map<String, String> entry, String before) {
    List<String> lines = new ArrayList<>();
    entry.forEach(
        (key, value) -> {
          String indent = lines.isEmpty() ? before : " ".repeat(before.length());
          lines.add(indent + key + ":" + (value.isEmpty() ? "" : " " + value));
        });
    return String.join(yaml.lineEnd(), lines);
  }

  private static String flow(Map<String, String> entry) {
    return entry.entrySet().stream()
        .map(each -> each.getKey() + ": " + each.getValue())
        .collect(Collectors.joining(", ", "{", "}"));
  }

  /** The text without an entry of a list; a list stays, empty, when its last entry goes. */
  public String withoutEntry(List<String> list, int index) throws Unchangeable {
    if (!(at(list).orElse(null) instanceof SequenceNode many) || index >= many.getValue().size()) {
      throw new Unchangeable("it is gone");
    }
    List<Node> items = many.getValue();
    int from = yaml.start(items.get(index));
    int to = yaml.end(items.get(index));
    if (items.size() == 1) {
      String indent = many.getStartMark().getColumn() == 0 ? STEP : "";
      return yaml.with(yaml.start(many), yaml.end(many), indent + "[]").text();
    }
    if (isFlow(many)) {
      return index + 1 < items.size()
          ? yaml.with(from, yaml.start(items.get(index + 1)), "").text()
          : yaml.with(yaml.end(items.get(index - 1)), to, "").text();
    }
    if (!yaml.text().substring(yaml.lineOf(from), from).strip().equals("-")) {
      throw new Unchangeable("its entries do not stand on lines of their own");
    }
    return yaml.with(yaml.lineOf(from), yaml.lineAfter(to), "").text();
  }
}
