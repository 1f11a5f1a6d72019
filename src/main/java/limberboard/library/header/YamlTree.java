package limberboard.library.header;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Report;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * YAML as a tree whose scalars are all text, with the line of every key. Anchors are refused: a
 * header says everything where it stands, and nothing can be blown up by repetition.
 *
 * @param root the mapping; empty when the text was empty or could not be read
 * @param report holds what was wrong, and the lines
 */
public record YamlTree(ObjectNode root, Report report) {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /**
   * Reads YAML.
   *
   * @param file for problems
   * @param text the YAML
   * @param firstLine the line of the file on which the text begins, from 1
   */
  public static YamlTree read(String file, String text, int firstLine) {
    Map<String, Integer> lines = new TreeMap<>();
    lines.put("", firstLine);
    Report report = new Report(file, lines);
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(Limits.HEADER_DEPTH);
    try {
      Node node = new Yaml(options).compose(new StringReader(text));
      if (node == null) {
        return new YamlTree(NODES.objectNode(), report);
      }
      JsonNode root = new Converter(lines, report, firstLine).convert(node, "");
      if (root instanceof ObjectNode mapping) {
        return new YamlTree(mapping, report);
      }
      report.error("", "holds no keys", "write one \"key: value\" a line");
    } catch (TooMuch e) {
      report.errorOnLine(e.line, "", e.getMessage(), e.right);
    } catch (MarkedYAMLException e) {
      int line = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine();
      report.errorOnLine(
          firstLine + line,
          "",
          "cannot be read as YAML: " + e.getProblem(),
          "check the indentation, and put text that holds \": \" or \" #\" in quotes");
    } catch (YAMLException e) {
      boolean deep = firstSentence(e).startsWith("Nesting Depth");
      report.error(
          "",
          deep
              ? "has more than " + Limits.HEADER_DEPTH + " lists and mappings within one another"
              : "cannot be read as YAML: " + firstSentence(e),
          "write plain keys and values");
    }
    return new YamlTree(NODES.objectNode(), report);
  }

  /** Something that goes beyond a limit; nothing of the text is then used. */
  private static final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int line;
    private final String right;

    TooMuch(int line, String wrong, String right) {
      super(wrong, null, false, false);
      this.line = line;
      this.right = right;
    }
  }

  private static String firstSentence(YAMLException e) {
    String message = String.valueOf(e.getMessage());
    return message.lines().findFirst().orElse(message);
  }

  /** Converts nodes; the path of each is a JSON pointer. */
  private static final class Converter {
    private final Map<String, Integer> lines;
    private final Report report;
    private final int firstLine;
    private int entries;
    private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    Converter(Map<String, Integer> lines, Report report, int firstLine) {
      this.lines = lines;
      this.report = report;
      this.firstLine = firstLine;
    }

    JsonNode convert(Node node, String path) {
      entries++;
      atMost(entries, Limits.HEADER_ENTRIES, node, "keys and values in all");
      if (!seen.add(node)) {
        report.error(path, "repeats another part by an anchor", "write the value out");
        return NullNode.instance;
      }
      if (node instanceof MappingNode mapping) {
        return mapping(mapping, path);
      }
      if (node instanceof SequenceNode sequence) {
        return sequence(sequence, path);
      }
      ScalarNode scalar = (ScalarNode) node;
      atMost(scalar.getValue().length(), Limits.TEXT_CHARACTERS, node, "characters in one value");
      boolean nothing = scalar.getTag().equals(Tag.NULL);
      return nothing ? NullNode.instance : NODES.textNode(scalar.getValue());
    }

    private ObjectNode mapping(MappingNode mapping, String path) {
      atMost(mapping.getValue().size(), Limits.LIST_ENTRIES, mapping, "keys in one place");
      ObjectNode object = NODES.objectNode();
      for (NodeTuple tuple : mapping.getValue()) {
        if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
          report.error(path, "has a key that is not plain text", "write \"key: value\"");
          continue;
        }
        String name = key.getValue();
        atMost(name.length(), Limits.NAME_CHARACTERS, key, "characters in a key");
        String at = Report.pointer(path, name);
        if (object.has(name)) {
          report.errorOnLine(
              line(key), name, "stands twice in the same place", "keep one of the two");
          continue;
        }
        lines.put(at, line(key));
        JsonNode value = convert(tuple.getValueNode(), at);
        if (!value.isNull()) {
          object.set(name, value);
        }
      }
      return object;
    }

    private ArrayNode sequence(SequenceNode sequence, String path) {
      atMost(sequence.getValue().size(), Limits.LIST_ENTRIES, sequence, "entries in one list");
      ArrayNode array = NODES.arrayNode();
      for (Node item : sequence.getValue()) {
        String at = path + "/" + array.size();
        lines.put(at, line(item));
        array.add(convert(item, at));
      }
      return array;
    }

    private void atMost(int count, int most, Node node, String what) {
      if (count > most) {
        throw new TooMuch(
            line(node), "has more than " + most + " " + what, "keep it under that limit");
      }
    }

    private int line(Node node) {
      return firstLine + node.getStartMark().getLine();
    }
  }
}
