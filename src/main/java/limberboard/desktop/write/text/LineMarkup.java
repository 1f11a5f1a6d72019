package limberboard.desktop.write.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells the parts of a page's text apart, line by line, so that they can be shown apart. */
final class LineMarkup {
  private static final Pattern KEY =
      Pattern.compile("^\\s*(?:- +)*([^\\s:#\\[{\"'][^:#\\[{]*:)(?=\\s|$)");
  private static final Pattern REMARK = Pattern.compile("(?:^|\\s)(#.*)$");
  private static final Pattern LINK = Pattern.compile("!?\\[[^\\]]*\\]\\([^)]*\\)");
  private static final Pattern STRONG = Pattern.compile("\\*\\*[^*]+\\*\\*|__[^_]+__");
  private static final Pattern CODE = Pattern.compile("`[^`]+`");
  private static final Pattern ITEM = Pattern.compile("^\\s*(?:[-*+]|\\d+[.)])(?= )");

  private LineMarkup() {}

  /** What a part is. */
  enum Sort {
    /** A line that begins or ends the header or verbatim text, and verbatim text. */
    QUIET,
    /** A key of the header. */
    KEY,
    /** A heading. */
    HEADING,
    /** A link or picture. */
    LINK,
    /** Text that stands out. */
    STRONG,
    /** The mark of an item of a list. */
    ITEM
  }

  /**
   * A part of a line.
   *
   * @param from where it begins in its line
   * @param to where it ends
   * @param sort what it is
   */
  record Span(int from, int to, Sort sort) {}

  /**
   * A line.
   *
   * @param text without its end
   * @param spans its parts, in order, without those that are plain
   */
  record Line(String text, List<Span> spans) {
    Line {
      spans = List.copyOf(spans);
    }
  }

  /** All lines of a text. */
  static List<Line> of(String plain) {
    List<Line> lines = new ArrayList<>();
    boolean header = false;
    boolean verbatim = false;
    int number = 0;
    for (String line : plain.split("\n", -1)) {
      boolean fence = line.strip().equals("---") && (number == 0 || header);
      boolean ticks = !header && line.strip().startsWith("```");
      if (fence) {
        header = number == 0;
        lines.add(whole(line, Sort.QUIET));
      } else if (header) {
        lines.add(headerLine(line));
      } else if (ticks || verbatim) {
        verbatim = ticks != verbatim;
        lines.add(whole(line, Sort.QUIET));
      } else {
        lines.add(bodyLine(line));
      }
      number++;
    }
    return lines;
  }

  private static Line whole(String line, Sort sort) {
    return new Line(line, line.isEmpty() ? List.of() : List.of(new Span(0, line.length(), sort)));
  }

  private static Line headerLine(String line) {
    List<Span> spans = new ArrayList<>();
    Matcher key = KEY.matcher(line);
    if (key.find()) {
      spans.add(new Span(key.start(1), key.end(1), Sort.KEY));
    }
    Matcher remark = REMARK.matcher(line);
    if (remark.find() && !line.substring(0, remark.start()).matches(".*[\"'][^\"']*$")) {
      spans.add(new Span(remark.start(1), remark.end(1), Sort.QUIET));
    }
    return new Line(line, spans);
  }

  private static Line bodyLine(String line) {
    if (line.matches("#{1,6}( .*)?")) {
      return whole(line, Sort.HEADING);
    }
    List<Span> spans = new ArrayList<>();
    add(ITEM, Sort.ITEM, line, spans);
    add(LINK, Sort.LINK, line, spans);
    add(STRONG, Sort.STRONG, line, spans);
    add(CODE, Sort.QUIET, line, spans);
    spans.sort(Comparator.comparingInt(Span::from));
    return new Line(line, spans);
  }

  private static void add(Pattern pattern, Sort sort, String line, List<Span> spans) {
    Matcher found = pattern.matcher(line);
    while (found.find()) {
      int from = found.start();
      int to = found.end();
      if (spans.stream().noneMatch(each -> each.from() < to && from < each.to())) {
        spans.add(new Span(from, to, sort));
      }
    }
  }
}
