package limberboard.library.header;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import limberboard.library.body.FigureQuote;
import limberboard.library.problem.Report;

/** Figures that the texts of a header quote, by links as in a body. */
public final class HeaderQuotes {
  private HeaderQuotes() {}

  /**
   * A figure quoted in a header.
   *
   * @param pointer the text's key as a JSON pointer: {@code /checks/0/how}
   * @param quote the link
   */
  public record Found(String pointer, FigureQuote quote) {}

  /** All of a header, in its order. */
  public static List<Found> in(ObjectNode header) {
    List<Found> found = new ArrayList<>();
    look(header, "", found);
    return List.copyOf(found);
  }

  private static void look(JsonNode node, String pointer, List<Found> found) {
    if (node instanceof TextNode text) {
      FigureQuote.inText(text.textValue()).forEach(quote -> found.add(new Found(pointer, quote)));
    } else if (node instanceof ObjectNode mapping) {
      mapping
          .properties()
          .forEach(each -> look(each.getValue(), Report.pointer(pointer, each.getKey()), found));
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        look(list.get(i), pointer + "/" + i, found);
      }
    }
  }

  /** The same header with words in the place of the links; what quotes nothing is left alone. */
  public static ObjectNode plain(ObjectNode header, Function<FigureQuote, String> words) {
    return (ObjectNode) replaced(header, words);
  }

  private static JsonNode replaced(JsonNode node, Function<FigureQuote, String> words) {
    if (node instanceof TextNode text) {
      return TextNode.valueOf(FigureQuote.plain(text.textValue(), words));
    }
    if (node instanceof ObjectNode mapping) {
      ObjectNode copy = mapping.objectNode();
      for (Map.Entry<String, JsonNode> each : mapping.properties()) {
        copy.set(each.getKey(), replaced(each.getValue(), words));
      }
      return copy;
    }
    if (node instanceof ArrayNode list) {
      ArrayNode copy = list.arrayNode();
      list.forEach(each -> copy.add(replaced(each, words)));
      return copy;
    }
    return node;
  }
}
