package limberboard.print;

/** Builds XHTML that is well formed whatever the text in it. For one page, on one thread. */
final class Markup {
  private static final int LONGEST_WORD = 60;
  private static final char ZERO_WIDTH_SPACE = '\u200B';

  private final StringBuilder out = new StringBuilder();

  /** Opens an element; attributes come as names and values in turn. */
  Markup open(String element, String... attributes) {
    out.append('<').append(element);
    attributes(attributes);
    out.append('>');
    return this;
  }

  /** Closes an element. */
  Markup close(String element) {
    out.append("</").append(element).append('>');
    return this;
  }

  /** An element without content. */
  Markup empty(String element, String... attributes) {
    out.append('<').append(element);
    attributes(attributes);
    out.append("/>");
    return this;
  }

  /** An element with nothing but text in it. */
  Markup element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close(element);
  }

  /** A line's end, so that the source can be read by a person. */
  Markup line() {
    out.append('\n');
    return this;
  }

  /** Text; runs of letters too long for any line may be broken. */
  Markup text(String text) {
    int run = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      run = Character.isWhitespace(c) ? 0 : run + 1;
      if (run > LONGEST_WORD) {
        out.append(ZERO_WIDTH_SPACE);
        run = 1;
      }
      character(c);
    }
    return this;
  }

  /** Text that is known to be well formed, such as the style sheet. */
  Markup raw(String markup) {
    out.append(markup);
    return this;
  }

  private void attributes(String... attributes) {
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      attributes[i + 1].codePoints().forEach(this::character);
      out.append('"');
    }
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
