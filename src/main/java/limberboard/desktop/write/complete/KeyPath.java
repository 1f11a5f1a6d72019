package limberboard.desktop.write.complete;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where in a header a place is, told by how far lines are indented, so that it is found in YAML
 * that is not finished.
 *
 * @param keys the keys that it lies within, the outermost first
 * @param token what was typed of what is to stand there
 * @param atKey whether a key is to stand there rather than a value
 */
record KeyPath(List<String> keys, String token, boolean atKey) {
  private static final Pattern LINE = Pattern.compile("^(\\s*(?:- +)*)([^\\s:#\\[{][^:#]*):(.*)$");
  private static final Pattern WITHIN = Pattern.compile("([\\w-]+)\\s*:\\s*[^,{}]*$");
  private static final Pattern TOKEN = Pattern.compile("[\\p{L}\\p{N}_/-]*$");

  KeyPath {
    keys = List.copyOf(keys);
  }

  /**
   * Finds it.
   *
   * @param header the lines of the header up to the caret
   */
  static KeyPath of(String header) {
    List<String> lines = new ArrayList<>(List.of(header.split("\n", -1)));
    String last = lines.remove(lines.size() - 1);
    Matcher typed = TOKEN.matcher(last);
    String token = typed.find() ? typed.group() : "";
    List<String> keys = new ArrayList<>();
    boolean atKey = false;
    int indent;
    Matcher line = LINE.matcher(last);
    if (line.matches()) {
      String value = line.group(3);
      inner(value, keys);
      atKey =
          keys.isEmpty() && value.matches(".*\\{[^}:]*")
              || value.matches(".*,\\s*[\\w-]*")
                  && value.contains("{")
                  && !keys.isEmpty()
                  && !value.contains("[");
      if (atKey) {
        keys.clear();
      }
      keys.add(0, line.group(2).strip());
      indent = line.group(1).length();
    } else {
      String before = last.substring(0, last.length() - token.length());
      atKey = true;
      indent = before.length();
      if (before.strip().matches("(- *)+")) {
        indent = before.indexOf('-') + 1;
      }
    }
    above(lines, indent, keys);
    return new KeyPath(keys, token, atKey);
  }

  /** The key within braces that a value stands behind. */
  private static void inner(String value, List<String> keys) {
    int brace = value.lastIndexOf('{');
    if (brace > value.lastIndexOf('}')) {
      Matcher within = WITHIN.matcher(value.substring(brace + 1));
      if (within.find()) {
        keys.add(within.group(1));
      }
    }
  }

  /** The keys of the lines above that are indented less, from the inside out. */
  private static void above(List<String> lines, int from, List<String> keys) {
    int indent = from;
    for (int i = lines.size() - 1; i >= 0 && indent > 0; i--) {
      Matcher line = LINE.matcher(lines.get(i));
      if (line.matches() && line.group(1).length() < indent) {
        keys.add(0, line.group(2).strip());
        indent = line.group(1).replaceFirst("(- +)+$", "").length();
        if (line.group(1).contains("-")) {
          indent = line.group(1).indexOf('-') + 1;
        }
      }
    }
  }
}
