package limberboard.library.body;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/**
 * A link that may quote a figure: one to a page, with a name behind {@code #}. In a body it is what
 * CommonMark takes for a link; in a text of a header the same letters.
 *
 * @param target where the link leads, as it is written
 * @param written the link's own text, without marks
 * @param from where that text begins in the letters around it; -1 where it cannot be found
 * @param to where it ends
 * @param line its line, from 0
 * @param inHeading whether it stands in a heading
 */
public record FigureQuote(
    String target, String written, int from, int to, int line, boolean inHeading) {
  private static final Pattern IN_TEXT =
      Pattern.compile("\\[([^\\[\\]]*)\\]\\(((?:[^()\\s#:]+\\.md)?#[^()\\s#]+)\\)");
  private static final Pattern TARGET = Pattern.compile("([^#:]+\\.md)?#[^#\\s]+");
  private static final Pattern LINE_BREAK = Pattern.compile("\r?\n[ \t>]*");

  /** The name behind {@code #}. */
  public String name() {
    return target.substring(target.indexOf('#') + 1);
  }

  /** The same with its line counted from another one. */
  public FigureQuote after(int lines) {
    return new FigureQuote(target, written, from, to, lines + line, inHeading);
  }

  /** Those of a parsed body, in its order. */
  public static List<FigureQuote> inBody(Node document, String body) {
    List<FigureQuote> quotes = new ArrayList<>();
    for (Iterator<Node> nodes = NodeWalk.below(document); nodes.hasNext(); ) {
      if (nodes.next() instanceof Link link
          && TARGET.matcher(String.valueOf(link.getDestination())).matches()) {
        quotes.add(of(link, body));
      }
    }
    return quotes;
  }

  private static FigureQuote of(Link link, String body) {
    int from = edge(link, link.getFirstChild(), true);
    int to = edge(link, link.getLastChild(), false);
    boolean found =
        from > 0
            && to >= from
            && to < body.length()
            && body.charAt(from - 1) == '['
            && body.charAt(to) == ']';
    return new FigureQuote(
        link.getDestination(),
        PlainWords.of(link),
        found ? from : -1,
        found ? to : -1,
        BodyScan.lineIndex(link),
        isInHeading(link));
  }

  /** Where the text of a link begins or ends; behind the first bracket where there is none. */
  private static int edge(Link link, Node child, boolean begin) {
    List<SourceSpan> spans = child == null ? link.getSourceSpans() : child.getSourceSpans();
    if (spans.isEmpty()) {
      return -1;
    }
    if (child == null) {
      return spans.get(0).getInputIndex() + 1;
    }
    SourceSpan last = spans.get(spans.size() - 1);
    return begin ? spans.get(0).getInputIndex() : last.getInputIndex() + last.getLength();
  }

  private static boolean isInHeading(Node node) {
    Node at = node;
    while (at != null && !(at instanceof Heading)) {
      at = at.getParent();
    }
    return at != null;
  }

  /** Those of letters that are no Markdown, such as a text of a header. */
  public static List<FigureQuote> inText(String text) {
    List<FigureQuote> quotes = new ArrayList<>();
    if (!text.contains("](")) {
      return quotes;
    }
    Matcher found = IN_TEXT.matcher(text);
    while (found.find()) {
      int line = (int) text.substring(0, found.start()).chars().filter(c -> c == '\n').count();
      String written = found.group(1).strip().replaceAll("\\s+", " ");
      quotes.add(
          new FigureQuote(found.group(2), written, found.start(1), found.end(1), line, false));
    }
    return quotes;
  }

  /**
   * Letters with other words in the place of what quotes say; everything else stays, line breaks
   * too.
   *
   * @param quotes of these letters, in their order
   * @param now what is to stand there; empty for what stays
   */
  public static String rewritten(
      String letters, List<FigureQuote> quotes, Function<FigureQuote, Optional<String>> now) {
    StringBuilder text = new StringBuilder();
    int at = 0;
    for (FigureQuote quote : quotes) {
      Optional<String> words = quote.from() < at ? Optional.empty() : now.apply(quote);
      if (words.isPresent()) {
        text.append(letters, at, quote.from()).append(words.get());
        Matcher breaks = LINE_BREAK.matcher(letters.substring(quote.from(), quote.to()));
        while (breaks.find()) {
          text.append(breaks.group());
        }
        at = quote.to();
      }
    }
    return text.append(letters, at, letters.length()).toString();
  }

  /** A text of a header as it is read: words in the place of the whole links. */
  public static String plain(String text, Function<FigureQuote, String> words) {
    StringBuilder plain = new StringBuilder();
    int at = 0;
    for (FigureQuote quote : inText(text)) {
      plain.append(text, at, quote.from() - 1).append(words.apply(quote));
      at = quote.to() + "](".length() + quote.target().length() + 1;
    }
    return plain.append(text, at, text.length()).toString();
  }
}
