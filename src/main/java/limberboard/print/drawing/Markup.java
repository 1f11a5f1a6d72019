package limberboard.print.drawing;

import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Builds XHTML that is well formed whatever the text in it. For one page, on one thread. */
public final class Markup {
  private static final int LONGEST_WORD = 24;
  private static final int PIECE = 100;
  private static final Pattern LONG_WORD =
      Pattern.compile("[^\\s\\u00A0]{" + (LONGEST_WORD + 1) + ",}+");

  private final StringBuilder out = new StringBuilder();
  private final IntUnaryOperator letters;

  /** A page whose characters all stand as they are. */
  public Markup() {
    this(IntUnaryOperator.identity());
  }

  /** A page on which other characters may stand for some. */
  public Markup(IntUnaryOperator letters) {
    this.letters = letters;
  }

  /** Opens an element; attributes come as names and values in turn. */
  public Markup open(String element, String... attributes) {
    out.append('<').append(element);
    attributes(attributes);
    out.append('>');
    return this;
  }

  /** Closes an element. */
  public Markup close(String element) {
    out.append("</").append(element).append('>');
    return this;
  }

  /** An element without content. */
  public Markup empty(String element, String... attributes) {
    out.append('<').append(element);
    attributes(attributes);
    out.append("/>");
    return this;
  }

  /** An element with nothing but text in it. */
  public Markup element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close(element);
  }

  /** A line's end, so that the source can be read by a person. */
  public Markup line() {
    out.append('\n');
    return this;
  }

  /**
   * Text. A word of more than {@value #LONGEST_WORD} characters is marked so that the style sheet
   * lets it be broken anywhere: the layout would otherwise drop what does not fit on its line.
   */
  public Markup text(String text) {
    Matcher matcher = LONG_WORD.matcher(text);
    int from = 0;
    while (matcher.find()) {
      characters(text.substring(from, matcher.start()));
      longWord(matcher.group());
      from = matcher.end();
    }
    return characters(text.substring(from));
  }

  /** In pieces, since the time to break one grows with the square of its length. */
  private void longWord(String word) {
    int[] letters = word.codePoints().toArray();
    for (int i = 0; i < letters.length; i += PIECE) {
      String piece = new String(letters, i, Math.min(PIECE, letters.length - i));
      open("span", "class", "long").characters(piece).close("span");
    }
  }

  /** An element with nothing but text in it, in which nothing is marked. */
  public Markup plainElement(String element, String text, String... attributes) {
    return open(element, attributes).characters(text).close(element);
  }

  private Markup characters(String text) {
    text.codePoints().map(letters).forEach(this::character);
    return this;
  }

  /** Text that is known to be well formed, such as the style sheet. */
  public Markup raw(String markup) {
    out.append(markup);
    return this;
  }

  /** Attributes as names and values in turn. */
  Markup attributes(String... attributes) {
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      attributes[i + 1].codePoints().forEach(this::character);
      out.append('"');
    }
    return this;
  }

  private void character(int c) {
    switch (c) {
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '&' -> out.append("&amp;");
      case '"' -> out.append("&quot;");
      case '\r' -> out.append("&#13;");
      default -> out.appendCodePoint(isAllowed(c) ? c : '\uFFFD');
    }
  }

  /** The characters of XML 1.0, section 2.2. */
  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c >= ' ' && c <= '\uD7FF'
        || c >= '\uE000' && c <= '\uFFFD'
        || c >= Character.MIN_SUPPLEMENTARY_CODE_POINT;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
