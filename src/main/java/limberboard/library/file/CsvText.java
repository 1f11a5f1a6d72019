package limberboard.library.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import limberboard.library.problem.Problem;

/**
 * The one grammar of CSV (RFC 4180), read and written: a text with the place of each line in it, so
 * that one can be changed and all others stay as they are, to the letter. Empty lines are passed
 * over, and so is a byte-order mark.
 *
 * @param rows its lines, the header first
 * @param brokenFrom the line, from 1, from which on it cannot be read, because a quoted cell is not
 *     closed or is followed by more text; empty when it can be read to its end
 */
public record CsvText(List<Row> rows, OptionalInt brokenFrom) {
  private static final char MARK = '\uFEFF';

  /**
   * One line, which may go over several lines of the file when a quoted cell does.
   *
   * @param cells its cells, without quotes
   * @param from where it begins in the text
   * @param to where its last cell ends in the text
   * @param next where the line after it begins
   * @param line the line of the file on which it ends, from 1
   */
  public record Row(List<String> cells, int from, int to, int next, int line) {}

  /** Reads a text. */
  public static CsvText read(String text) {
    return new Scan(text).read();
  }

  /** What the first line names; nothing when there is none. */
  public List<String> columns() {
    return rows.isEmpty() ? List.of() : rows.get(0).cells();
  }

  /** All lines but the first. */
  public List<Row> lines() {
    return rows.stream().skip(1).toList();
  }

  /** What is wrong with the first line of a file that must have these columns. */
  public Optional<Problem> badHeader(String file, List<String> needed) {
    String right = "begin with " + String.join(",", needed);
    for (String column : needed) {
      if (!columns().contains(column)) {
        return Optional.of(Problem.error(file, 1, column, "has no such column", right));
      }
    }
    return new HashSet<>(columns()).size() < columns().size()
        ? Optional.of(Problem.error(file, 1, "", "has two columns of one name", right))
        : Optional.empty();
  }

  /**
   * That the file cannot be read to its end.
   *
   * @param so what follows from it, as the end of the sentence, or empty
   */
  public Optional<Problem> broken(String file, String so) {
    return brokenFrom.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                file,
                brokenFrom.getAsInt(),
                "",
                "cannot be read from here on, so that nothing from this line to the end of the file"
                    + " is counted"
                    + so,
                "look for a double quote that is not closed; double a quote within quoted text"));
  }

  /** A line as it is written, without its end. */
  public static String line(List<String> cells) {
    return cells.equals(List.of(""))
        ? "\"\""
        : cells.stream().map(CsvText::cell).collect(Collectors.joining(","));
  }

  private static String cell(String value) {
    boolean plain = !value.isEmpty() && value.chars().noneMatch(c -> ",\"\r\n".indexOf(c) >= 0);
    char first = plain ? value.charAt(0) : ' ';
    boolean open = !Character.isWhitespace(first) && first != '#' && first != MARK;
    return value.isEmpty() || open ? value : '"' + value.replace("\"", "\"\"") + '"';
  }

  /** The line end that a text uses. */
  public static String lineEnd(String text) {
    return text.contains("\r\n") || !text.contains("\n") ? "\r\n" : "\n";
  }

  private static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;
  }

  private static final class Scan {
    private final String text;
    private final List<Row> rows = new ArrayList<>();
    private int at;
    private int line = 1;

    Scan(String text) {
      this.text = text;
      this.at = !text.isEmpty() && text.charAt(0) == MARK ? 1 : 0;
    }

    CsvText read() {
      while (at < text.length()) {
        int first = line;
        try {
          row();
        } catch (Broken e) {
          return new CsvText(List.copyOf(rows), OptionalInt.of(first));
        }
      }
      return new CsvText(List.copyOf(rows), OptionalInt.empty());
    }

    private void row() throws Broken {
      int from = at;
      List<String> cells = new ArrayList<>();
      cells.add(cell());
      while (at < text.length() && text.charAt(at) == ',') {
        at++;
        cells.add(cell());
      }
      int to = at;
      int ends = line;
      lineEnd();
      if (to > from) {
        rows.add(new Row(List.copyOf(cells), from, to, at, ends));
      }
    }

    private String cell() throws Broken {
      if (isAt('"')) {
        at++;
        return quoted();
      }
      int from = at;
      while (at < text.length() && text.charAt(at) != ',' && !isLineEnd(text.charAt(at))) {
        at++;
      }
      return text.substring(from, at);
    }

    private String quoted() throws Broken {
      StringBuilder value = new StringBuilder();
      while (at < text.length()) {
        char c = text.charAt(at++);
        if (c != '"') {
          value.append(c);
          if (c == '\n' || (c == '\r' && !isAt('\n'))) {
            line++;
          }
        } else if (isAt('"')) {
          value.append(c);
          at++;
        } else {
          afterQuote();
          return value.toString();
        }
      }
      throw new Broken();
    }

    private void afterQuote() throws Broken {
      while (at < text.length() && isBlank(text.charAt(at))) {
        at++;
      }
      if (at < text.length() && text.charAt(at) != ',' && !isLineEnd(text.charAt(at))) {
        throw new Broken();
      }
    }

    private void lineEnd() {
      if (at < text.length()) {
        at += isAt('\r') && at + 1 < text.length() && text.charAt(at + 1) == '\n' ? 2 : 1;
        line++;
      }
    }

    private boolean isAt(char c) {
      return at < text.length() && text.charAt(at) == c;
    }

    private static boolean isBlank(char c) {
      return c == ' ' || c == '\t';
    }

    private static boolean isLineEnd(char c) {
      return c == '\n' || c == '\r';
    }
  }
}
