package limberboard.writing;

import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The pages that killed programs write: each says in its text which version it is of and whether
 * all of it is there, in one part that one copy of the workspace changes and in one that another
 * copy changes.
 */
final class KilledPages {
  /** How many there are; each names the page that is renamed. */
  static final int COUNT = 24;

  /** How the ids of the page that is renamed begin; a number follows. */
  static final String HUB = "hub";

  static final String FIRST_HUB = "hub-0";

  private static final Pattern HERE =
      Pattern.compile(
          "(?s)---\r\n.*Version ([0-9]+)\\.\r\n.*\r\nEnd (-?[0-9]+)\\.\r\n\r\n"
              + "There ([0-9]+), twice ([0-9]+)\\.\r\n");

  private KilledPages() {}

  /** Where one lies. */
  static String path(int page) {
    return "articles/topics/page-" + page + ".md";
  }

  /** A version of a page, with the part of the other copy as it was. */
  static PageText page(int page, int version, int there, String hub, Random random) {
    StringBuilder text = new StringBuilder();
    text.append("---\r\ntitle: Page ").append(page).append("\r\n---\r\n");
    text.append("Go by [the hub](../procedures/").append(hub).append(".md).\r\n\r\n");
    text.append("Version ").append(version).append(".\r\n\r\n");
    int lines = random.nextInt(120);
    for (int i = 0; i < lines; i++) {
      text.append("Line ").append(random.nextInt()).append(".\r\n");
    }
    return new PageText(text + "\r\nEnd " + sum(text.toString()) + ".\r\n\r\n" + thereLine(there));
  }

  /** A page with its other copy's part in a later version. */
  static String withThere(String text, int there) {
    return text.replaceAll("There [0-9]+, twice [0-9]+\\.\r\n", thereLine(there));
  }

  private static String thereLine(int there) {
    return "There " + there + ", twice " + 2 * there + ".\r\n";
  }

  /** Of everything but the name of the hub. */
  private static int sum(String text) {
    return text.replaceAll("hub-[0-9]+", HUB).hashCode();
  }

  /** Which version a page is of, here; empty when it is not whole. */
  static Optional<Integer> version(String text) {
    Matcher parts = HERE.matcher(text);
    boolean whole =
        parts.matches()
            && parts
                .group(2)
                .equals(
                    Integer.toString(sum(text.substring(0, parts.start(2) - "\r\nEnd ".length()))))
            && Integer.parseInt(parts.group(4)) == 2 * Integer.parseInt(parts.group(3));
    return whole ? Optional.of(Integer.parseInt(parts.group(1))) : Optional.empty();
  }

  /** Which version a page's other part is of; -1 when it is not whole. */
  static int there(String text) {
    Matcher parts = HERE.matcher(text);
    return parts.matches() ? Integer.parseInt(parts.group(3)) : -1;
  }

  /** The number in an id of the hub; -1 for none. */
  static int number(String hub) {
    return hub.isEmpty() ? -1 : Integer.parseInt(hub.substring(FIRST_HUB.length() - 1));
  }
}
