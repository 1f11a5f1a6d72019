package limberboard.library.header;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Head;
import limberboard.library.page.Kind;
import limberboard.library.value.Named;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A text in YAML that is the name of something, such as of a page, and where it stands. Which texts
 * are, the records say by {@link limberboard.library.value.Names}.
 *
 * @param named what it is the name of
 * @param name the name
 * @param from where it begins in the YAML, with its quotes
 * @param to where it ends
 * @param line its line in the YAML, from 0
 */
public record HeaderName(Named named, String name, int from, int to, int line) {

  /** All names in the header of a page; none when it cannot be read as YAML. */
  public static List<HeaderName> ofPage(Kind kind, String yaml) {
    return of(List.of(kind.details().asSubclass(Record.class), Head.class), yaml);
  }

  /** All names in a YAML text that is read into a record; none when it cannot be read as YAML. */
  public static List<HeaderName> of(Class<? extends Record> type, String yaml) {
    return of(List.of(type), yaml);
  }

  private static List<HeaderName> of(List<Class<? extends Record>> types, String yaml) {
    YamlText text = new YamlText(yaml);
    try {
      Walk walk = new Walk(text, new ArrayList<>());
      walk.keys(text.node(List.of()).orElseThrow(), HeaderKey.of(types));
      return walk.found();
    } catch (Unchangeable e) {
      return List.of();
    }
  }

  /** Goes through nodes beside the types that they are read into. */
  private record Walk(YamlText text, List<HeaderName> found) {
    void keys(Node node, Map<String, HeaderKey> keys) {
      if (node instanceof MappingNode mapping) {
        for (NodeTuple tuple : mapping.getValue()) {
          if (tuple.getKeyNode() instanceof ScalarNode name && keys.containsKey(name.getValue())) {
            HeaderKey key = keys.get(name.getValue());
            key.keyNames().ifPresent(what -> ofKeys(tuple.getValueNode(), what));
            value(tuple.getValueNode(), key.type(), key.names());
          }
        }
      }
    }

    private void ofKeys(Node node, Named what) {
      if (node instanceof MappingNode mapping) {
        for (NodeTuple tuple : mapping.getValue()) {
          if (tuple.getKeyNode() instanceof ScalarNode name) {
            add(name, what);
          }
        }
      }
    }

    private void value(Node node, Type type, Optional<Named> named) {
      if (node instanceof SequenceNode list) {
        Type entry = type instanceof ParameterizedType ? last(type) : type;
        list.getValue().forEach(item -> value(item, entry, named));
      } else if (type instanceof ParameterizedType generic && generic.getRawType() == Map.class) {
        if (node instanceof MappingNode mapping) {
          mapping.getValue().forEach(tuple -> value(tuple.getValueNode(), last(type), named));
        }
      } else if (type instanceof ParameterizedType) {
        value(node, last(type), named);
      } else if (node instanceof ScalarNode scalar) {
        named.or(() -> HeaderKey.namedAsText(type)).ifPresent(what -> add(scalar, what));
      } else if (type instanceof Class<?> plain && plain.isRecord()) {
        keys(node, HeaderKey.of(plain.asSubclass(Record.class)));
      }
    }

    private static Type last(Type type) {
      Type[] arguments = ((ParameterizedType) type).getActualTypeArguments();
      return arguments[arguments.length - 1];
    }

    private void add(ScalarNode node, Named what) {
      found.add(
          new HeaderName(
              what,
              node.getValue(),
              text.start(node),
              text.end(node),
              node.getStartMark().getLine()));
    }
  }
}
