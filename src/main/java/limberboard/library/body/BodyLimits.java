package limberboard.library.body;

import java.util.Iterator;
import java.util.Optional;
import limberboard.library.problem.Limits;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;

/**
 * Tells what of a page's body goes beyond {@link Limits}: before it is parsed, what would keep the
 * parser busy or exhaust its stack, and afterwards, what would keep whoever shows it busy. Takes
 * time in proportion to the text.
 */
public final class BodyLimits {
  private final String body;
  private int line;
  private int runCharacters;
  private int runAngles;

  private BodyLimits(String body) {
    this.body = body;
  }

  /**
   * What goes beyond a limit.
   *
   * @param line the body's line, from 0
   * @param wrong what is wrong
   * @param right what to do
   */
  public record Excess(int line, String wrong, String right) {}

  /** What of the text goes beyond a limit, if anything: then it is not to be parsed. */
  public static Optional<Excess> ofText(String body) {
    if (body.length() > Limits.BODY_CHARACTERS) {
      return Optional.of(
          new Excess(
              0,
              "has a text of " + body.length() + " characters",
              "keep it under " + Limits.BODY_CHARACTERS + ", and make two pages of it"));
    }
    return new BodyLimits(body).first();
  }

  private Optional<Excess> first() {
    for (int start = 0; start < body.length(); line++) {
      int newline = body.indexOf('\n', start);
      int end = newline < 0 ? body.length() : newline;
      Optional<Excess> excess = line(start, end);
      if (excess.isPresent()) {
        return excess;
      }
      start = end + 1;
    }
    return Optional.empty();
  }

  private Optional<Excess> line(int start, int end) {
    if (line >= Limits.BODY_LINES) {
      return excess(
          "has more than " + Limits.BODY_LINES + " lines of text", "make two pages of it");
    }
    if (end - start > Limits.LINE_CHARACTERS) {
      return excess(
          "has a line of " + (end - start) + " characters",
          "keep lines under " + Limits.LINE_CHARACTERS + " and break longer ones");
    }
    boolean blank = true;
    int bars = 0;
    for (int i = start; i < end; i++) {
      char c = body.charAt(i);
      blank &= c == ' ' || c == '\t';
      bars += c == '|' ? 1 : 0;
      if (c == '<') {
        runAngles++;
        Optional<Excess> excess = angle(i + 1);
        if (excess.isPresent()) {
          return excess;
        }
      }
    }
    if (bars > Limits.LINE_BARS) {
      return excess(
          "has a table of " + bars + " columns", "keep it under " + Limits.LINE_BARS + " columns");
    }
    return run(blank, end - start);
  }

  private Optional<Excess> run(boolean blank, int length) {
    runCharacters = blank ? 0 : runCharacters + length + 1;
    runAngles = blank ? 0 : runAngles;
    if (runCharacters > Limits.RUN_CHARACTERS) {
      return excess(
          "has more than " + Limits.RUN_CHARACTERS + " characters without a blank line",
          "part the text into paragraphs");
    }
    if (runAngles > Limits.RUN_ANGLES) {
      return excess(
          "has more than " + Limits.RUN_ANGLES + " signs < without a blank line",
          "write them out, or part the text into paragraphs");
    }
    return Optional.empty();
  }

  private Optional<Excess> angle(int from) {
    int at = from;
    boolean mail = false;
    while (at < body.length() && " \t\n<>".indexOf(body.charAt(at)) < 0) {
      mail |= body.charAt(at) == '@';
      at++;
    }
    if (mail && at - from > Limits.MAIL_CHARACTERS) {
      return excess(
          "has a mail address of " + (at - from) + " characters",
          "a mail address has at most " + Limits.MAIL_CHARACTERS);
    }
    if (attributes(from) > Limits.TAG_ATTRIBUTES) {
      return excess(
          "has an HTML tag of more than " + Limits.TAG_ATTRIBUTES + " attributes",
          "write Markdown instead");
    }
    return Optional.empty();
  }

  /**
   * How many attributes follow a tag's name, as HTML writes them; one more than the limit is all.
   */
  private int attributes(int from) {
    int at = from;
    while (at < body.length() && isOfName(body.charAt(at))) {
      at++;
    }
    int count = 0;
    while (count <= Limits.TAG_ATTRIBUTES) {
      int name = blanks(at);
      int value = name;
      while (value < body.length() && isOfName(body.charAt(value))) {
        value++;
      }
      if (name == at || value == name) {
        break;
      }
      count++;
      at = afterValue(value);
    }
    return count;
  }

  private int afterValue(int from) {
    int equals = blanks(from);
    if (equals >= body.length() || body.charAt(equals) != '=') {
      return from;
    }
    int at = blanks(equals + 1);
    if (at < body.length() && "'\"".indexOf(body.charAt(at)) >= 0) {
      int close = body.indexOf(body.charAt(at), at + 1);
      return close < 0 ? body.length() : close + 1;
    }
    while (at < body.length() && " \t\n\"'=<>`".indexOf(body.charAt(at)) < 0) {
      at++;
    }
    return at;
  }

  private int blanks(int from) {
    int at = from;
    while (at < body.length() && " \t\n".indexOf(body.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }

  private static boolean isOfName(char c) {
    return c < 128 && Character.isLetterOrDigit(c) || "-_:.".indexOf(c) >= 0;
  }

  private Optional<Excess> excess(String wrong, String right) {
    return Optional.of(new Excess(line, wrong, right));
  }

  /** What of a parsed body goes beyond a limit, if anything: then it is not to be shown. */
  public static Optional<Excess> ofDocument(Node document) {
    int parts = 0;
    int cells = 0;
    int links = 0;
    for (Iterator<Node> nodes = NodeWalk.below(document); nodes.hasNext(); ) {
      Node node = nodes.next();
      parts++;
      cells += node instanceof TableCell ? 1 : 0;
      String target = target(node);
      links += target.isEmpty() ? 0 : 1;
      if (target.length() > Limits.TARGET_CHARACTERS) {
        return at(
            node,
            "has a link of " + target.length() + " characters",
            "keep links under " + Limits.TARGET_CHARACTERS);
      }
      if (links > Limits.LINKS) {
        return at(node, "has more than " + Limits.LINKS + " links", "make two pages of it");
      }
      if (cells > Limits.TABLE_CELLS) {
        return at(
            node,
            "has more than " + Limits.TABLE_CELLS + " cells of tables",
            "make two pages of it");
      }
      if (parts > Limits.BODY_PARTS) {
        return at(
            node,
            "has more than " + Limits.BODY_PARTS + " paragraphs, items and other parts",
            "make two pages of it");
      }
    }
    return Optional.empty();
  }

  private static Optional<Excess> at(Node node, String wrong, String right) {
    return Optional.of(new Excess(BodyScan.lineIndex(node), wrong, right));
  }

  private static String target(Node node) {
    if (node instanceof Link link) {
      return String.valueOf(link.getDestination());
    }
    return node instanceof Image image ? String.valueOf(image.getDestination()) : "";
  }
}
