package limberboard.library.header;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A YAML text in which single keys are set or taken out; everything else in it, comments, order,
 * quotes, blank lines and line ends, stays to the letter. Immutable.
 *
 * @param text the text
 */
public record YamlText(String text) {
  /** The text cannot be changed in place. */
  public static final class Unchangeable extends Exception {
    private static final long serialVersionUID = 1L;

    /** With what stands in the way. */
    public Unchangeable(String why) {
      super(why);
    }
  }

  /**
   * The value of a key as it is written, if it has one: {@code equipment}, or a key within it, or
   * an entry of a list by its number from 0.
   */
  public Optional<String> written(List<String> path) throws Unchangeable {
    return find(path).map(node -> text.substring(start(node), end(node)));
  }

  /** Whether its keys stand on lines of their own, from the first letter of each. */
  public boolean isOnLines() throws Unchangeable {
    MappingNode root = root();
    return root.getFlowStyle() != FlowStyle.FLOW && root.getStartMark().getColumn() == 0;
  }

  /** The keys of a mapping, in order; none when it is not there. */
  public List<String> keys(String key) throws Unchangeable {
    Optional<Node> node = find(List.of(key));
    return node.isPresent() && node.get() instanceof MappingNode mapping
        ? mapping.getValue().stream().map(YamlText::name).toList()
        : List.of();
  }

  /** Whether nothing but blanks stands behind the value of a key, or the key is not there. */
  public boolean endsItsLine(List<String> path) throws Unchangeable {
    Optional<Node> node = find(path);
    return node.isEmpty() || isLineEnd(afterBlanks(end(node.get())));
  }

  /**
   * The same with another value, already written as YAML, for a key that is there. Blanks behind
   * the old value go with it where the new one has several lines: there they would belong to it.
   */
  public YamlText replaced(List<String> path, String value) throws Unchangeable {
    Node old = find(path).orElseThrow(() -> new Unchangeable("it is gone"));
    int from = start(old);
    int to = value.contains("\n") ? afterBlanks(end(old)) : end(old);
    if (isLineEnd(value, 0)) {
      int begin = beforeBlanks(from);
      boolean onItsLine = begin > 0 && text.charAt(begin - 1) == '\n';
      return with(begin, to, onItsLine ? value.replaceFirst("\\R", "") : value);
    }
    boolean glued = from > 0 && text.charAt(from - 1) == ':';
    return with(from, to, (glued ? " " : "") + value);
  }

  /**
   * The same with a further key at the top.
   *
   * @param after keys after the last of which it is put; at the end when none of them is there
   */
  public YamlText added(String key, String value, List<String> after) throws Unchangeable {
    return added(root(), key, value, after);
  }

  /** The same with a further key in a mapping that is there. */
  public YamlText addedTo(String mapping, String key, String value) throws Unchangeable {
    Node there = find(List.of(mapping)).orElseThrow(() -> new Unchangeable("it is gone"));
    if (there instanceof MappingNode node) {
      return added(node, key, value, List.of());
    }
    return replaced(List.of(mapping), "{" + key + ": " + value + "}");
  }

  /** The same with a further key in a mapping of it; see {@link #added(String, String, List)}. */
  YamlText added(MappingNode node, String key, String value, List<String> after)
      throws Unchangeable {
    List<NodeTuple> tuples = node.getValue();
    if (tuples.isEmpty()) {
      int at = start(node) + 1;
      return with(at, at, key + ": " + value);
    }
    NodeTuple before = tuples.get(tuples.size() - 1);
    for (NodeTuple tuple : tuples) {
      if (after.contains(name(tuple))) {
        before = tuple;
      }
    }
    int end = end(before.getValueNode());
    if (node.getFlowStyle() == FlowStyle.FLOW) {
      return with(end, end, ", " + key + ": " + value);
    }
    int next = lineAfter(end);
    String indent = " ".repeat(tuples.get(0).getKeyNode().getStartMark().getColumn());
    String line = indent + key + ":" + (isLineEnd(value, 0) ? "" : " ") + value;
    boolean open = next == text.length() && !text.endsWith("\n");
    return open ? with(next, next, lineEnd() + line) : with(next, next, line + lineEnd());
  }

  /** The same without a key; a mapping that would be empty goes with its last key. */
  public YamlText without(List<String> path) throws Unchangeable {
    MappingNode parent = path.size() == 1 ? root() : mapping(path.get(0));
    List<NodeTuple> tuples = parent.getValue();
    int index = index(parent, path.get(path.size() - 1));
    if (index < 0) {
      return this;
    }
    if (tuples.size() == 1 && path.size() > 1) {
      return without(path.subList(0, 1));
    }
    int from = start(tuples.get(index).getKeyNode());
    int to = end(tuples.get(index).getValueNode());
    if (parent.getFlowStyle() == FlowStyle.FLOW) {
      if (index + 1 < tuples.size()) {
        return with(from, start(tuples.get(index + 1).getKeyNode()), "");
      }
      return with(index == 0 ? from : end(tuples.get(index - 1).getValueNode()), to, "");
    }
    return with(lineOf(from), lineAfter(to), "");
  }

  private MappingNode mapping(String key) throws Unchangeable {
    Node node = find(List.of(key)).orElseThrow(() -> new Unchangeable("it is gone"));
    if (node instanceof MappingNode mapping) {
      return mapping;
    }
    throw new Unchangeable(key + " is no mapping");
  }

  /** A value as a node; its marks are those of the text. */
  Optional<Node> node(List<String> path) throws Unchangeable {
    return find(path);
  }

  private Optional<Node> find(List<String> path) throws Unchangeable {
    return within(root(), path);
  }

  /** What stands within a node: behind keys, or in lists by their number from 0. */
  static Optional<Node> within(Node node, List<String> path) {
    Optional<Node> at = Optional.of(node);
    for (String key : path) {
      at = at.flatMap(each -> within(each, key));
    }
    return at;
  }

  private static Optional<Node> within(Node node, String key) {
    if (node instanceof MappingNode mapping) {
      int index = index(mapping, key);
      return index < 0
          ? Optional.empty()
          : Optional.of(mapping.getValue().get(index).getValueNode());
    }
    if (node instanceof SequenceNode sequence && key.matches("[0-9]{1,6}")) {
      int index = Integer.parseInt(key);
      return index < sequence.getValue().size()
          ? Optional.of(sequence.getValue().get(index))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static int index(MappingNode mapping, String key) {
    for (int i = 0; i < mapping.getValue().size(); i++) {
      if (name(mapping.getValue().get(i)).equals(key)) {
        return i;
      }
    }
    return -1;
  }

  private static String name(NodeTuple tuple) {
    return tuple.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
  }

  private MappingNode root() throws Unchangeable {
    try {
      Node node = new Yaml(new LoaderOptions()).compose(new StringReader(text));
      if (node instanceof MappingNode mapping) {
        return mapping;
      }
    } catch (YAMLException e) {
      throw new Unchangeable("it cannot be read as YAML");
    }
    throw new Unchangeable("it holds no keys");
  }

  /** Where a node begins in the text. */
  int start(Node node) {
    return place(node.getStartMark());
  }

  /** Where what a node says ends, before any blank lines and comments behind it. */
  int end(Node node) {
    if (node instanceof CollectionNode<?> many && many.getFlowStyle() != FlowStyle.FLOW) {
      List<Node> parts = new ArrayList<>();
      if (node instanceof MappingNode mapping) {
        mapping.getValue().forEach(tuple -> parts.add(tuple.getValueNode()));
      } else {
        parts.addAll(((SequenceNode) node).getValue());
      }
      return parts.isEmpty() ? place(node.getEndMark()) : end(parts.get(parts.size() - 1));
    }
    int end = place(node.getEndMark());
    int start = start(node);
    while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  /** The line's end, or what stands before it other than blanks. */
  private int afterBlanks(int from) {
    int at = from;
    while (at < text.length() && " \t".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }

  /** Behind what stands before it other than blanks. */
  private int beforeBlanks(int from) {
    int at = from;
    while (at > 0 && " \t".indexOf(text.charAt(at - 1)) >= 0) {
      at--;
    }
    return at;
  }

  private boolean isLineEnd(int at) {
    return at == text.length() || isLineEnd(text, at);
  }

  private static boolean isLineEnd(String text, int at) {
    return text.startsWith("\n", at) || text.startsWith("\r\n", at);
  }

  /** A mark counts whole characters, which may be two in the text. */
  private int place(Mark mark) {
    return text.offsetByCodePoints(0, mark.getIndex());
  }

  int lineOf(int at) {
    return text.lastIndexOf('\n', at - 1) + 1;
  }

  int lineAfter(int at) {
    int end = text.indexOf('\n', at);
    return end < 0 ? text.length() : end + 1;
  }

  /** The line end that the text uses. */
  public String lineEnd() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  /** The same with another stretch in the place of one. */
  YamlText with(int from, int to, String with) {
    return new YamlText(text.substring(0, from) + with + text.substring(to));
  }
}
