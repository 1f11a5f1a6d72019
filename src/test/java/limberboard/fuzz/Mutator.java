package limberboard.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

/** Spoils files: some by what they mean, some byte by byte. The seed decides all of it. */
final class Mutator {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final int LONGEST = 700_000;
  private static final int MOST_MUTATIONS = 3;

  private static final List<String> ODD_VALUES =
      List.of(
          "",
          " ",
          "~",
          "x",
          "-",
          "0",
          "-1",
          "1",
          "0.5",
          "-0.0",
          "1e308",
          "1e-320",
          "NaN",
          "Infinity",
          "-Infinity",
          ".inf",
          "2147483647",
          "2147483648",
          "-2147483648",
          "99999999999",
          "1900",
          "2200",
          "1899",
          "2201",
          "0000",
          "true",
          "P1Y",
          "P999999999Y",
          "P0D",
          "P-1Y",
          "P1D",
          "P200Y",
          "PT1H",
          "2026-02-30",
          "9999-12-31",
          "0000-01-01",
          "+999999999-01-01",
          "1900-01-01",
          "2200-12-31",
          "--02-29",
          "--13-01",
          "1/2",
          "../..",
          "2012/2018",
          "9/1",
          "0 ml",
          "1e9 ml",
          "99999999 m",
          "0 mm",
          "1 parsec",
          "always",
          "something-else",
          "others",
          "<html><b>x",
          "<script>x</script>",
          "../../../etc/passwd",
          "file:///etc/passwd",
          "https://example.org/a",
          "\u0000",
          "\u001b[31m",
          "\u202e",
          "\uFEFF",
          "\uD83D\uDE00",
          "größe ½",
          "[x](y)",
          "&amp;",
          "=1+1",
          "%s",
          "{0}",
          "launched",
          "hauled-out",
          "new-meter",
          "looked-again",
          "dunlin");

  private static final List<String> ODD_KEYS =
      List.of(
          "99999999999",
          "2147483648",
          "0",
          "",
          "~",
          "a/b",
          "a~b",
          "title",
          "fits",
          "any",
          "when",
          "model",
          "zones",
          "weight",
          "others",
          "something-else",
          "\u0000",
          "x y",
          "?",
          "<<");

  private static final List<String> PIECES =
      List.of(
          "[a]",
          "![a](b)",
          "[a](<b",
          "a <![CDATA[",
          "a <!--",
          "a <?",
          "<",
          "<a ",
          "<a@a.a",
          ".a",
          "*a **b ",
          "**x _y",
          "`",
          "``a`",
          "> ",
          "- ",
          "1. ",
          "# h\n",
          "\n",
          "\n\na",
          "| a ",
          "|a|b|\n|-|-|\n",
          "&#x41;",
          "&",
          "\\",
          "a  \n",
          "~~~\n",
          "<div src=",
          "   ",
          "\t",
          "a ",
          "w0rd ",
          "[a]: b\n",
          "[a](../topics/x.md) ",
          "![x](../pictures/x.svg) ",
          "<b>",
          "</b>",
          "http://example.org/",
          "\u00ad",
          "\u4e2d\u6587",
          "\uD83D\uDE00",
          "\u05d0",
          "-",
          "=\n");

  private final Random random;

  Mutator(long seed) {
    random = new Random(seed);
  }

  /** One of the things. */
  <T> T any(List<T> things) {
    return things.get(random.nextInt(things.size()));
  }

  /** A whole number from 0 to one below the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** The file spoilt. */
  byte[] spoil(String file, byte[] bytes) {
    byte[] spoilt = bytes;
    for (int i = 1 + below(MOST_MUTATIONS); i > 0; i--) {
      spoilt =
          below(3) == 0 || isPicture(file) && below(3) > 0 ? bytes(spoilt) : sense(file, spoilt);
    }
    return spoilt.length > LONGEST ? java.util.Arrays.copyOf(spoilt, LONGEST) : spoilt;
  }

  private static boolean isPicture(String file) {
    return file.endsWith(".svg") || file.endsWith(".png");
  }

  private byte[] sense(String file, byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    String spoilt;
    if (file.endsWith(".md")) {
      spoilt = page(text);
    } else if (file.endsWith(".yaml")) {
      spoilt = yaml(text);
    } else if (file.endsWith(".csv")) {
      spoilt = table(text, ",");
    } else {
      spoilt = below(2) == 0 ? table(text, file.endsWith(".svg") ? "\"" : ",") : prose(text);
    }
    return spoilt.getBytes(StandardCharsets.UTF_8);
  }

  private String page(String text) {
    int end = text.indexOf("\n---\n", 4);
    if (!text.startsWith("---\n") || end < 0) {
      return prose(text);
    }
    return below(3) > 0
        ? "---\n" + yaml(text.substring(4, end + 1)) + text.substring(end + 1)
        : text.substring(0, end + 5) + prose(text.substring(end + 5));
  }

  private String prose(String text) {
    int at = below(text.length() + 1);
    int to = Math.min(text.length(), at + below(200));
    String rest = text.substring(at);
    return switch (below(5)) {
      case 0 -> text.substring(0, at) + text.substring(to);
      case 1 -> text.substring(0, at) + text.substring(at, to).repeat(1 + below(50)) + rest;
      case 2 -> text.substring(0, at) + any(PIECES) + any(ODD_VALUES) + rest;
      case 3 -> text.substring(0, at) + any(PIECES).repeat(1 + below(300)) + rest;
      default -> text.substring(0, at) + "\n\n" + many(any(PIECES) + any(PIECES)) + "\n\n" + rest;
    };
  }

  private String many(String piece) {
    int[] counts = {100, 1_000, 5_000, 50_000};
    return piece.repeat(Math.min(counts[below(counts.length)], 300_000 / piece.length()));
  }

  private String table(String text, String separator) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      lines.add("");
    }
    int line = below(lines.size());
    switch (below(6)) {
      case 0 -> lines.remove(line);
      case 1 -> lines.addAll(line, Collections.nCopies(1 + below(2_000), lines.get(line)));
      case 2 -> lines.set(line, lines.get(line) + separator + any(ODD_VALUES));
      case 3 -> lines.add(line, many(any(ODD_VALUES) + separator));
      case 4 -> Collections.shuffle(lines, random);
      default -> {
        String[] cells = lines.get(line).split(separator, -1);
        cells[below(cells.length)] = any(ODD_VALUES);
        lines.set(line, String.join(separator, cells));
      }
    }
    return String.join(below(4) == 0 ? "\r\n" : "\n", lines) + "\n";
  }

  private String yaml(String text) {
    try {
      YAMLMapper mapper = new YAMLMapper();
      JsonNode root = mapper.readTree(text);
      if (!(root instanceof ObjectNode)) {
        return prose(text);
      }
      List<JsonNode> holders = new ArrayList<>();
      gather(root, holders);
      change(any(holders), holders);
      String written = mapper.writeValueAsString(root);
      return written.startsWith("---\n")
          ? written.substring(4)
          : written.replaceFirst("^--- ?", "");
    } catch (JsonProcessingException e) {
      return prose(text);
    }
  }

  private static void gather(JsonNode node, List<JsonNode> holders) {
    if (node.isContainerNode()) {
      holders.add(node);
      node.forEach(child -> gather(child, holders));
    }
  }

  private void change(JsonNode holder, List<JsonNode> holders) {
    if (holder instanceof ObjectNode object) {
      change(object, holders);
    } else if (holder instanceof ArrayNode array) {
      change(array, holders);
    }
  }

  private void change(ObjectNode object, List<JsonNode> holders) {
    List<String> keys = new ArrayList<>();
    for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
      keys.add(names.next());
    }
    if (keys.isEmpty()) {
      object.set(any(ODD_KEYS), value(holders));
      return;
    }
    String key = any(keys);
    switch (below(6)) {
      case 0 -> object.remove(key);
      case 1 -> object.set(any(ODD_KEYS), object.remove(key));
      case 2 -> {
        JsonNode other = object.get(any(keys)).deepCopy();
        object.set(key, other);
      }
      case 3 -> object.set(any(ODD_KEYS), value(holders));
      default -> object.set(key, value(holders));
    }
  }

  private void change(ArrayNode array, List<JsonNode> holders) {
    if (array.isEmpty()) {
      array.add(value(holders));
      return;
    }
    int at = below(array.size());
    switch (below(5)) {
      case 0 -> array.remove(at);
      case 1 -> array.add(array.get(at).deepCopy());
      case 2 -> {
        for (int i = below(1_500); i > 0; i--) {
          array.add(array.get(at).deepCopy());
        }
      }
      default -> array.set(at, value(holders));
    }
  }

  private JsonNode value(List<JsonNode> holders) {
    return switch (below(9)) {
      case 0 -> NODES.nullNode();
      case 1 -> NODES.arrayNode().addNull();
      case 2 -> NODES.objectNode().put(any(ODD_KEYS), any(ODD_VALUES));
      case 3 -> nested(35);
      case 4 -> NODES.textNode(many(any(ODD_VALUES) + any(PIECES)));
      case 5 -> copied(any(holders));
      default -> NODES.textNode(any(ODD_VALUES));
    };
  }

  private static JsonNode copied(JsonNode node) {
    return node.deepCopy();
  }

  private JsonNode nested(int deep) {
    JsonNode node = NODES.textNode("x");
    for (int i = below(deep); i > 0; i--) {
      node =
          below(2) == 0
              ? NODES.arrayNode().add(node)
              : NODES.objectNode().set(below(2) == 0 ? "any" : "x", node);
    }
    return node;
  }

  private byte[] bytes(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int at = below(bytes.length + 1);
    int to = Math.min(bytes.length, at + 1 + below(64));
    out.write(bytes, 0, at);
    switch (below(6)) {
      case 0 -> out.write(bytes, to, bytes.length - to);
      case 1 -> {
        byte[] noise = new byte[1 + below(40)];
        random.nextBytes(noise);
        out.writeBytes(noise);
        out.write(bytes, at, bytes.length - at);
      }
      case 2 -> {
        for (int i = below(20); i >= 0; i--) {
          out.write(bytes, at, to - at);
        }
        out.write(bytes, at, bytes.length - at);
      }
      case 3 -> {
        // cut off here
      }
      case 4 -> {
        out.write(below(256));
        out.write(bytes, to, bytes.length - to);
      }
      default -> {
        out.writeBytes(any(ODD_VALUES).getBytes(StandardCharsets.UTF_8));
        out.write(bytes, to, bytes.length - to);
      }
    }
    return out.toByteArray();
  }
}
