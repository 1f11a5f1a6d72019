package limberboard.print.text;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Lines of plain text, wrapped at a width and indented. Characters that would steer a terminal are
 * dropped. For one page, on one thread.
 */
public final class TextLines {
  private static final int LEAST_ROOM = 20;

  private final int width;
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> indents = new ArrayDeque<>();
  private String indent = "";
  private String bullet = "";
  private boolean blank = true;

  public TextLines(int width) {
    this.width = width;
  }

  /** How many characters a line has room for, at least 20 however deep it is indented. */
  int room() {
    return Math.max(LEAST_ROOM, width - indent.length());
  }

  /** What follows is indented by this, until {@link #out()}. */
  public void in(String by) {
    indents.push(indent);
    indent = indent + by;
  }

  /** What follows is an item of a list: its first line begins with the bullet. */
  public void item(String mark) {
    in(" ".repeat(mark.length()));
    bullet = mark;
  }

  /** Ends an indentation. */
  public void out() {
    indent = indents.pop();
    bullet = "";
  }

  /** A blank line, unless there just was one. */
  void gap() {
    if (!blank) {
      out.append('\n');
      blank = true;
    }
  }

  /** Text, wrapped. */
  public void wrapped(String text) {
    for (String line : text.split("\n", -1)) {
      wrap(clean(line), room()).forEach(this::line);
    }
  }

  /** Text, wrapped, with a blank line after it; nothing when it is empty. */
  void paragraph(String text) {
    if (!text.isBlank()) {
      wrapped(text);
      gap();
    }
  }

  /** A heading with a line under it. */
  public void underlined(String text, char with) {
    gap();
    List<String> lines = wrap(clean(text), room());
    lines.forEach(this::line);
    int longest = lines.stream().mapToInt(TextLines::length).max().orElse(0);
    line(String.valueOf(with).repeat(longest));
    gap();
  }

  /** One line as it is, without what would steer a terminal. */
  void line(String text) {
    String before =
        bullet.isEmpty() ? indent : indent.substring(0, indent.length() - bullet.length()) + bullet;
    bullet = "";
    out.append((before + clean(text)).stripTrailing()).append('\n');
    blank = false;
  }

  /** Breaks text into lines of so many characters at most; words longer than that are broken. */
  static List<String> wrap(String text, int room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (String word : text.strip().split("\\s+")) {
      String rest = word;
      int length = length(rest);
      if (used > 0 && used + 1 + length > room) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      int from = 0;
      while (length > room) {
        int to = rest.offsetByCodePoints(from, room);
        lines.add(rest.substring(from, to));
        from = to;
        length -= room;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      line.append(rest, from, rest.length());
      used += length;
    }
    if (used > 0 || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** How many characters wide a text is. */
  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static String clean(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> c == '\t' ? ' ' : c)
        .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
