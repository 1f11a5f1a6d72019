package limberboard.library.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import limberboard.library.header.YamlText.Unchangeable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The YAML of a header with the values of its keys as they stand in it, for changing one of them in
 * its place. Immutable; for one thread.
 */
public final class HeaderSource {
  /** What a key says. */
  public sealed interface Value {}

  /** One text; empty where nothing stands behind the key. */
  public record One(String text) implements Value {}

  /** A list of texts. */
  public record Many(List<String> entries) implements Value {
    /** Copies the list. */
    public Many {
      entries = List.copyOf(entries);
    }
  }

  /**
   * Anything else.
   *
   * @param yaml as it is written, moved to the left margin, with line ends {@code \n}
   */
  public record Nested(String yaml) implements Value {}

  /**
   * Where a value stands.
   *
   * @param from where it begins in the text
   * @param to where it ends
   */
  public record Place(int from, int to) {}

  private static final int LONGEST_LINE = 110;

  private final YamlText yaml;
  private final Optional<Node> root;

  /**
   * A header.
   *
   * @param text the YAML, with whatever line ends it has
   */
  public HeaderSource(String text) {
    yaml = new YamlText(text);
    root = composed(yaml);
  }

  private static Optional<Node> composed(YamlText yaml) {
    try {
      return yaml.node(List.of());
    } catch (Unchangeable e) {
      return Optional.empty();
    }
  }

  /** The YAML. */
  public String text() {
    return yaml.text();
  }

  /** Whether it can be read as keys and values, or holds nothing but comments. */
  public boolean isReadable() {
    return isEmpty() || mapping().isPresent();
  }

  /** Whether it holds nothing but comments and blank lines. */
  private boolean isEmpty() {
    return text().lines().allMatch(line -> line.isBlank() || line.stripLeading().startsWith("#"));
  }

  private Optional<MappingNode> mapping() {
    return root.filter(MappingNode.class::isInstance).map(MappingNode.class::cast);
  }

  private Optional<Node> node(List<String> path) {
    return root.flatMap(node -> YamlText.within(node, path));
  }

  /** Its keys, in order. */
  public List<String> keys() {
    List<String> keys = new ArrayList<>();
    mapping()
        .ifPresent(
            root -> {
              for (NodeTuple tuple : root.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key) {
                  keys.add(key.getValue());
                }
              }
            });
    return keys;
  }

  /** What all its keys say. */
  public Map<String, Value> values() {
    Map<String, Value> values = new TreeMap<>();
    keys().forEach(key -> value(key).ifPresent(value -> values.put(key, value)));
    return values;
  }

  /** What a key says; empty when it is not there. */
  public Optional<Value> value(String key) {
    return node(List.of(key)).map(this::value);
  }

  private Value value(Node node) {
    if (node instanceof ScalarNode scalar) {
      return new One(scalar.getValue());
    }
    if (node instanceof SequenceNode list
        && list.getValue().stream().allMatch(ScalarNode.class::isInstance)) {
      return new Many(
          list.getValue().stream().map(item -> ((ScalarNode) item).getValue()).toList());
    }
    int start = yaml.start(node);
    String written = text().substring(start, yaml.end(node)).replace("\r\n", "\n");
    int column = node.getStartMark().getColumn();
    return new Nested(written.replaceAll("(?m)(?<=\\n) {1," + Math.max(column, 1) + "}", ""));
  }

  /** Where the value of a key, or of one within it, stands; empty when it is not there. */
  public Optional<Place> place(String... path) {
    return node(List.of(path)).map(node -> new Place(yaml.start(node), yaml.end(node)));
  }

  /** The letters of a key's value; empty when it is not there. */
  public Optional<String> written(String key) {
    return place(key).map(place -> text().substring(place.from(), place.to()));
  }

  /** The same with other letters as the value of a key that is there. */
  public HeaderSource withLetters(String key, String letters) throws Unchangeable {
    Place place =
        place(key).orElseThrow(() -> new Unchangeable("the key " + key + " is not there"));
    boolean glued = place.from() > 0 && text().charAt(place.from() - 1) == ':';
    return new HeaderSource(
        yaml.with(place.from(), place.to(), (glued ? " " : "") + letters).text());
  }

  /**
   * The same with a key that says something else.
   *
   * @param before keys after the last of which it is put where it is not there yet
   */
  public HeaderSource with(String key, Value value, List<String> before) throws Unchangeable {
    if (isEmpty()) {
      String end = text().isEmpty() || text().endsWith("\n") ? "" : yaml.lineEnd();
      return new HeaderSource(
          text() + end + key + ":" + spaced(letters("", value, true)) + yaml.lineEnd());
    }
    Optional<Value> now = value(key);
    if (now.isEmpty()) {
      boolean any = keys().stream().anyMatch(before::contains);
      YamlText added =
          any || keys().isEmpty()
              ? yaml.added(key, letters("", value, true), before)
              : yaml.added(key, letters("", value, true), List.of());
      return new HeaderSource(added.text());
    }
    if (now.get() instanceof Many old
        && value instanceof Many many
        && !old.entries().isEmpty()
        && !many.entries().isEmpty()) {
      return new HeaderSource(YamlList.saying(yaml, List.of(key), many.entries()).text());
    }
    String letters = letters(written(key).orElse(""), value, yaml.endsItsLine(List.of(key)));
    return new HeaderSource(yaml.replaced(List.of(key), letters).text());
  }

  private static String spaced(String letters) {
    return letters.startsWith("\n") || letters.startsWith("\r\n") ? letters : " " + letters;
  }

  /**
   * A value as it is written.
   *
   * @param free whether nothing but blanks stands behind it, so that it may have several lines
   */
  private String letters(String old, Value value, boolean free) {
    String lineEnd = yaml.lineEnd();
    if (value instanceof One one) {
      return free && YamlScalar.isBlock(one.text())
          ? YamlScalar.block(one.text(), lineEnd)
          : YamlList.like(old, one.text());
    }
    if (value instanceof Many many) {
      String flow = YamlList.flow(many.entries());
      return flow.length() <= LONGEST_LINE
          ? flow
          : indented(
              String.join(
                  "\n",
                  many.entries().stream().map(each -> "- " + YamlScalar.value(each)).toList()),
              lineEnd);
    }
    String nested = ((Nested) value).yaml().stripTrailing();
    boolean line = !nested.contains("\n") && (nested.startsWith("{") || nested.startsWith("["));
    return line ? nested : indented(nested, lineEnd);
  }

  private static String indented(String yaml, String lineEnd) {
    StringBuilder lines = new StringBuilder();
    yaml.lines().forEach(line -> lines.append(lineEnd).append(line.isBlank() ? "" : "  " + line));
    return lines.toString();
  }

  /** The same without a key. */
  public HeaderSource without(String key) throws Unchangeable {
    return value(key).isEmpty() ? this : new HeaderSource(yaml.without(List.of(key)).text());
  }
}
