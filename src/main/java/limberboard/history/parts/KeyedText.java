package limberboard.history.parts;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.library.problem.Limits;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * A YAML text whose keys stand on lines of their own, cut at those lines. Remarks and blank lines
 * belong to the key below them.
 *
 * @param keys each key with its lines, in order
 * @param rest what stands after the last key's value
 */
record KeyedText(Map<String, String> keys, String rest) {
  private static final Pattern OTHER_LINE_ENDS =
      Pattern.compile("\\r(?!\\n)|[\\u0085\\u2028\\u2029]");

  /** Cuts a text; empty when it holds no keys on lines of their own, or one twice. */
  static Optional<KeyedText> of(String text) {
    if (OTHER_LINE_ENDS.matcher(text).find()) {
      return Optional.empty();
    }
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(Limits.HEADER_DEPTH);
    try {
      Node node = new Yaml(options).compose(new StringReader(text));
      return node == null
          ? Optional.of(new KeyedText(Map.of(), text))
          : node instanceof MappingNode mapping
                  && mapping.getFlowStyle() != FlowStyle.FLOW
                  && mapping.getStartMark().getColumn() == 0
              ? cut(WholeLines.of(text), mapping)
              : Optional.empty();
    } catch (YAMLException e) {
      return Optional.empty();
    }
  }

  private static Optional<KeyedText> cut(List<String> lines, MappingNode mapping) {
    Map<String, String> keys = new LinkedHashMap<>();
    int from = 0;
    List<NodeTuple> tuples = mapping.getValue();
    for (int i = 0; i < tuples.size(); i++) {
      if (!(tuples.get(i).getKeyNode() instanceof ScalarNode key)) {
        return Optional.empty();
      }
      int line = key.getStartMark().getLine();
      int next =
          i + 1 < tuples.size()
              ? tuples.get(i + 1).getKeyNode().getStartMark().getLine()
              : lines.size();
      int end = withoutRemarks(lines, line, next);
      if (line < from || end <= line || keys.containsKey(key.getValue())) {
        return Optional.empty();
      }
      keys.put(key.getValue(), String.join("", lines.subList(from, end)));
      from = end;
    }
    return Optional.of(
        new KeyedText(keys, String.join("", new ArrayList<>(lines.subList(from, lines.size())))));
  }

  /** Where the lines of a key end that begins on a line, before the remarks of the next. */
  private static int withoutRemarks(List<String> lines, int line, int next) {
    int end = Math.min(next, lines.size());
    while (end > line + 1
        && (lines.get(end - 1).isBlank()
            || lines.get(end - 1).startsWith("#")
            || lines.get(end - 1).startsWith("..."))) {
      end--;
    }
    return end;
  }
}
