package limberboard.writing;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a page's file to the letter: with its byte-order mark, if it has one, and its line
 * ends. Immutable.
 *
 * @param text the text
 */
public record PageText(String text) {
  private static final Pattern FENCE = Pattern.compile("(?m)^---\\s*?(?:\\n|\\z)");
  private static final String MARK = "\uFEFF";

  /** No text at all: a page that is not there yet. */
  public static final PageText NONE = new PageText("");

  /**
   * A stretch of the text.
   *
   * @param from where it begins
   * @param to where it ends
   */
  public record Stretch(int from, int to) {
    /** What stands there. */
    public String of(String text) {
      return text.substring(from, to);
    }
  }

  /**
   * The text of these bytes; {@link #bytes} gives exactly them again.
   *
   * @throws CharacterCodingException when they are not UTF-8
   */
  public static PageText of(byte[] bytes) throws CharacterCodingException {
    return new PageText(
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
  }

  /** Its bytes, as the file has them. */
  public byte[] bytes() {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Its text as people see it, with line ends {@code \n} and without a mark. */
  public String plain() {
    return text.substring(start()).replace("\r\n", "\n");
  }

  /** The line end of new lines: that of the first line; {@code \n} where there is none. */
  public String lineEnd() {
    int end = text.indexOf('\n');
    return end > 0 && text.charAt(end - 1) == '\r' ? "\r\n" : "\n";
  }

  private int start() {
    return text.startsWith(MARK) ? 1 : 0;
  }

  /** The YAML between the lines {@code ---}; empty when there is no closed header. */
  public Optional<Stretch> header() {
    return fences().map(ends -> new Stretch(ends[0], ends[1]));
  }

  /** What follows the header; everything when there is none. */
  public Stretch body() {
    return fences()
        .map(ends -> new Stretch(ends[2], text.length()))
        .orElse(new Stretch(start(), text.length()));
  }

  /** Where the header begins and ends, and where the body begins. */
  private Optional<int[]> fences() {
    Matcher fence = FENCE.matcher(text).region(start(), text.length());
    fence.useAnchoringBounds(true);
    if (!fence.lookingAt()) {
      return Optional.empty();
    }
    int first = fence.end();
    return fence.find()
        ? Optional.of(new int[] {first, fence.start(), fence.end()})
        : Optional.empty();
  }

  /**
   * A line of the plain text without its end; the last one where there are fewer.
   *
   * @param number from 1; a smaller one counts as the first
   */
  public Stretch line(int number) {
    String plain = plain();
    int from = 0;
    for (int i = 1; i < number && plain.indexOf('\n', from) >= 0; i++) {
      from = plain.indexOf('\n', from) + 1;
    }
    int end = plain.indexOf('\n', from);
    return new Stretch(from, end < 0 ? plain.length() : end);
  }

  /** The same with another header; it must have one. */
  public PageText withHeader(String yaml) {
    Stretch old = header().orElseThrow();
    return new PageText(text.substring(0, old.from()) + yaml + text.substring(old.to()));
  }

  /** The same with another body. */
  public PageText withBody(String markdown) {
    return new PageText(text.substring(0, body().from()) + markdown);
  }

  /**
   * The text after it was edited where line ends are {@code \n}: lines that stayed keep their ends,
   * new ones get the usual end of this text, and the mark stays.
   *
   * @param edited what was made of {@link #plain}
   */
  public PageText edited(String edited) {
    if (edited.equals(plain())) {
      return this;
    }
    String body = text.substring(start());
    if (!body.contains("\r\n")) {
      return new PageText(text.substring(0, start()) + edited);
    }
    List<String> was = lines(body);
    List<String> is = lines(edited);
    int shared = Math.min(was.size(), is.size());
    int begin = 0;
    while (begin < shared && same(was.get(begin), is.get(begin))) {
      begin++;
    }
    int end = 0;
    while (end < shared - begin
        && same(was.get(was.size() - 1 - end), is.get(is.size() - 1 - end))) {
      end++;
    }
    StringBuilder now = new StringBuilder(text.substring(0, start()));
    was.subList(0, begin).forEach(now::append);
    is.subList(begin, is.size() - end).forEach(line -> now.append(line.replace("\n", lineEnd())));
    was.subList(was.size() - end, was.size()).forEach(now::append);
    return new PageText(now.toString());
  }

  private static List<String> lines(String text) {
    return Arrays.asList(text.split("(?<=\n)"));
  }

  private static boolean same(String line, String plain) {
    return line.replace("\r\n", "\n").equals(plain);
  }
}
