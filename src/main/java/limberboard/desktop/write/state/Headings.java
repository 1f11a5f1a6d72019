package limberboard.desktop.write.state;

import java.util.Locale;
import java.util.Optional;
import limberboard.writing.PageText;

/** Finds headings of a page's text, and the heading that a place of it stands under. */
public final class Headings {
  private Headings() {}

  /**
   * Where the line of a heading begins in the plain text; where the text after the header begins
   * when there is none of these words.
   */
  public static int find(PageText page, String words) {
    PageText plain = new PageText(page.plain());
    int at = plain.body().from();
    String wanted = bare(words);
    for (String line : plain.body().of(plain.text()).split("(?<=\n)")) {
      if (line.startsWith("#") && bare(line).equals(wanted)) {
        return at;
      }
      at += line.length();
    }
    return plain.body().from();
  }

  /** The heading above a place of the plain text; empty when there is none. */
  public static Optional<String> above(PageText page, int place) {
    String text = page.plain();
    Optional<String> last = Optional.empty();
    int at = 0;
    for (String line : text.split("(?<=\n)")) {
      if (at > place) {
        break;
      }
      if (line.startsWith("#") && at >= new PageText(text).body().from()) {
        last = Optional.of(bare(line));
      }
      at += line.length();
    }
    return last;
  }

  private static String bare(String heading) {
    return heading
        .strip()
        .replaceAll("^#+|#+$", "")
        .replaceAll("[*_`]", "")
        .replaceAll("\\s+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }
}
