package limberboard.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * One line of {@code trade-facts.spec.md}: a rule of the trade that a page has to hold.
 *
 * @param part the part of the boat
 * @param rule the rule
 * @param page the procedure that holds it
 * @param check the kind of check
 * @param values what the check asks for
 */
record TradeFact(String part, String rule, String page, String check, List<String> values) {
  private static final String FILE = "/limberboard/library/trade-facts.spec.md";
  private static final int COLUMNS = 4;

  /** All facts of the file. */
  static List<TradeFact> all() {
    try (InputStream in = TradeFact.class.getResourceAsStream(FILE)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.substring(text.indexOf("## The facts"))
          .lines()
          .filter(line -> line.startsWith("| "))
          .skip(2)
          .map(TradeFact::of)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TradeFact of(String line) {
    String[] cells = line.substring(2, line.length() - 2).split(" \\| ");
    if (cells.length != COLUMNS) {
      throw new IllegalArgumentException(line);
    }
    int colon = cells[3].indexOf(": ");
    String check = cells[3].substring(0, colon);
    String rest = cells[3].substring(colon + 2);
    List<String> values = check.equals("says") ? List.of(rest) : Arrays.asList(rest.split("; "));
    return new TradeFact(cells[0], cells[1], cells[2], check, values);
  }

  @Override
  public String toString() {
    return part + ", " + rule + ": " + page + " " + check + " " + values;
  }
}
