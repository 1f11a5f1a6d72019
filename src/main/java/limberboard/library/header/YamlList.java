package limberboard.library.header;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.header.YamlText.Unchangeable;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A list of texts within a YAML text: entries that stay keep their letters, and so do the comments
 * beside them.
 */
public final class YamlList {
  private final List<String> path;
  private final List<String> values;

  private YamlList(List<String> path, List<String> values) {
    this.path = path;
    this.values = values;
  }

  /**
   * The text with a list that says something else.
   *
   * @param yaml the text
   * @param path where the list stands; it must be there, with an entry at least
   * @param values what it is to say, at least one entry
   */
  public static YamlText saying(YamlText yaml, List<String> path, List<String> values)
      throws Unchangeable {
    return new YamlList(path, values).in(yaml);
  }

  /** A list on one line: {@code [one, two]}. */
  public static String flow(List<String> values) {
    return "[" + String.join(", ", values.stream().map(YamlScalar::value).toList()) + "]";
  }

  private YamlText in(YamlText yaml) throws Unchangeable {
    List<String> old = new ArrayList<>();
    for (Node item : list(yaml).getValue()) {
      old.add(item instanceof ScalarNode scalar ? scalar.getValue() : "");
    }
    int shared = Math.min(old.size(), values.size());
    int begin = 0;
    while (begin < shared && old.get(begin).equals(values.get(begin))) {
      begin++;
    }
    int end = 0;
    while (end < shared - begin
        && old.get(old.size() - 1 - end).equals(values.get(values.size() - 1 - end))) {
      end++;
    }
    int was = old.size() - begin - end;
    int is = values.size() - begin - end;
    YamlText now = yaml;
    for (int i = begin + Math.min(was, is); i < begin + is; i++) {
      now = put(now, i, YamlScalar.value(values.get(i)));
    }
    for (int i = begin + was - 1; i >= begin + is; i--) {
      now = without(now, i);
    }
    for (int i = begin; i < begin + Math.min(was, is); i++) {
      List<String> item = new ArrayList<>(path);
      item.add(Integer.toString(i));
      String there = now.written(item).orElse("");
      now = now.replaced(item, like(there, values.get(i)));
    }
    return now;
  }

  /** In the quotes that stand there, otherwise in those that it needs. */
  static String like(String there, String value) {
    return YamlScalar.alike(there, value);
  }

  private SequenceNode list(YamlText yaml) throws Unchangeable {
    if (yaml.node(path).orElse(null) instanceof SequenceNode list && !list.getValue().isEmpty()) {
      return list;
    }
    throw new Unchangeable("it is no list with entries");
  }

  private YamlText put(YamlText yaml, int index, String entry) throws Unchangeable {
    SequenceNode list = list(yaml);
    boolean flow = list.getFlowStyle() == FlowStyle.FLOW;
    if (index == 0) {
      Node first = list.getValue().get(0);
      int at = flow ? yaml.start(first) : yaml.lineOf(yaml.start(first));
      return yaml.with(at, at, flow ? entry + ", " : line(yaml, first, entry) + yaml.lineEnd());
    }
    Node before = list.getValue().get(index - 1);
    int end = yaml.end(before);
    if (flow) {
      return yaml.with(end, end, ", " + entry);
    }
    int next = yaml.lineAfter(end);
    boolean open = next == yaml.text().length() && !yaml.text().endsWith("\n");
    String line = line(yaml, before, entry);
    return yaml.with(next, next, open ? yaml.lineEnd() + line : line + yaml.lineEnd());
  }

  /** A line like that of another entry. */
  private static String line(YamlText yaml, Node like, String entry) throws Unchangeable {
    int start = yaml.start(like);
    String before = yaml.text().substring(yaml.lineOf(start), start);
    if (!before.isBlank() && !before.strip().equals("-")) {
      throw new Unchangeable("its entries do not stand on lines of their own");
    }
    return before + entry;
  }

  private YamlText without(YamlText yaml, int index) throws Unchangeable {
    List<Node> items = list(yaml).getValue();
    int from = yaml.start(items.get(index));
    int to = yaml.end(items.get(index));
    if (list(yaml).getFlowStyle() == FlowStyle.FLOW) {
      return index + 1 < items.size()
          ? yaml.with(from, yaml.start(items.get(index + 1)), "")
          : yaml.with(index == 0 ? from : yaml.end(items.get(index - 1)), to, "");
    }
    return yaml.with(yaml.lineOf(from), yaml.lineAfter(to), "");
  }
}
