package limberboard.desktop.read;

import java.awt.Point;
import java.awt.Rectangle;
import java.text.BreakIterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The text of a page as it is laid out: every letter with its place, and what each passage is.
 * Between passages stand line breaks, between the cells of a row tabs, and before items their
 * marks, so that a part of it reads well elsewhere. Immutable.
 *
 * @param text all of it
 * @param passages in their order
 * @param links in their order
 */
record LaidOutText(String text, List<LaidOutPassage> passages, List<Link> links) {
  /** No text at all. */
  static final LaidOutText EMPTY = new LaidOutText("", List.of(), List.of());

  LaidOutText {
    passages = List.copyOf(passages);
    links = List.copyOf(links);
  }

  /**
   * A part of the text.
   *
   * @param start its first letter
   * @param end after its last letter
   */
  record Part(int start, int end) {
    boolean isEmpty() {
      return start == end;
    }
  }

  int length() {
    return text.length();
  }

  /** A part as it reads: joined spaces are spaces. */
  String plain(Part part) {
    return text.substring(part.start(), part.end()).replace('\u00a0', ' ');
  }

  /** Where a part is painted, a rectangle a run. */
  List<Rectangle> boxes(Part part) {
    return runs(part).stream().map(run -> run.between(part.start(), part.end())).toList();
  }

  /** The runs that a part is, or is in. */
  List<Run> runs(Part part) {
    return passages.stream()
        .filter(passage -> passage.start() < part.end() && passage.end() > part.start())
        .flatMap(passage -> passage.runs().stream())
        .filter(run -> run.start() < part.end() && run.end() > part.start())
        .toList();
  }

  /** Where a place of the text is painted, one pixel wide; empty on a page without text. */
  Optional<Rectangle> caret(int offset) {
    Optional<Run> best = Optional.empty();
    for (LaidOutPassage passage : passages) {
      for (Run run : passage.runs()) {
        if (best.isEmpty() || run.start() <= offset) {
          best = Optional.of(run);
        }
      }
    }
    return best.map(run -> new Rectangle(run.x(offset), run.box().y, 1, run.box().height));
  }

  /** The place in the text that lies nearest to a point of the page. */
  int offsetAt(Point point) {
    Optional<Run> best = Optional.empty();
    double least = Double.MAX_VALUE;
    for (LaidOutPassage passage : passages) {
      for (Run run : passage.runs()) {
        double far = distance(run.box(), point);
        if (far < least) {
          least = far;
          best = Optional.of(run);
        }
      }
    }
    return best.map(run -> run.offsetAt(point.x)).orElse(0);
  }

  /** Lines count before columns, as when one draws down the margin of a page. */
  private static double distance(Rectangle box, Point point) {
    int dx = Math.max(0, Math.max(box.x - point.x, point.x - box.x - box.width));
    int dy = Math.max(0, Math.max(box.y - point.y, point.y - box.y - box.height));
    return dy * 1000.0 + dx;
  }

  /** The link that is painted at a point. */
  Optional<Link> linkAt(Point point) {
    return links.stream()
        .filter(link -> boxes(part(link)).stream().anyMatch(box -> box.contains(point)))
        .findFirst();
  }

  /** What of the text a link is. */
  static Part part(Link link) {
    return new Part(link.start(), link.end());
  }

  /** The word at a place, or the space between two. */
  Part wordAt(int offset) {
    BreakIterator words = BreakIterator.getWordInstance(Locale.UK);
    words.setText(text);
    int at = Math.max(0, Math.min(offset, length() - 1));
    int end = length() == 0 ? 0 : words.following(at);
    return end <= 0 ? new Part(0, 0) : new Part(words.previous(), end);
  }

  /** The passage at a place, with everything in it; nothing where there is none. */
  Part passageAt(int offset) {
    return passages.stream()
        .filter(passage -> passage.start() <= offset && offset <= passage.end())
        .findFirst()
        .map(passage -> new Part(passage.start(), passage.end()))
        .orElse(new Part(offset, offset));
  }

  /** Where the next word begins (1), or where this or the one before did (-1). */
  int word(int offset, int by) {
    int at = offset;
    if (by > 0) {
      while (at < length() && Character.isLetterOrDigit(text.charAt(at))) {
        at++;
      }
      while (at < length() && !Character.isLetterOrDigit(text.charAt(at))) {
        at++;
      }
    } else {
      while (at > 0 && !Character.isLetterOrDigit(text.charAt(at - 1))) {
        at--;
      }
      while (at > 0 && Character.isLetterOrDigit(text.charAt(at - 1))) {
        at--;
      }
    }
    return at;
  }
}
