package limberboard.print.markdown;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import limberboard.library.body.PlainWords;
import org.commonmark.node.Link;

/**
 * Decides where the links and pictures of a page may lead: to pages of the library and pictures
 * within {@code articles/}. Nothing is read. Immutable.
 */
public final class LinkTargets {
  private static final String ARTICLES = "articles/";
  private static final Pattern SCHEME =
      Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*:.*", Pattern.DOTALL);
  private static final Pattern ADDRESS =
      Pattern.compile("(?i)(https?://|mailto:)[^\\s\\p{Cntrl}]+");
  private static final Pattern PICTURE = Pattern.compile(".*\\.(svg|png|jpe?g)");

  private static final String ENDING = ".md";

  /** What stands behind the text of a link to a name on a page. */
  @FunctionalInterface
  public interface Beside {
    /**
     * What stands there; nothing where the name is no figure.
     *
     * @param page the page's id
     * @param name what the link names behind {@code #}
     * @param written the link's text
     */
    String of(String page, String name, String written);
  }

  private final String path;
  private final Predicate<String> isPage;
  private final Beside beside;

  /**
   * Targets as seen from one page.
   *
   * @param path the page's file, relative to the workspace
   * @param isPage whether there is a page with an id
   */
  public LinkTargets(String path, Predicate<String> isPage) {
    this(path, isPage, (page, name, written) -> "");
  }

  /**
   * The same, where some links quote figures.
   *
   * @param beside what stands behind the text of a link with a name behind {@code #}
   */
  public LinkTargets(String path, Predicate<String> isPage, Beside beside) {
    this.path = path;
    this.isPage = isPage;
    this.beside = beside;
  }

  /** What stands behind the text of a link, such as the same in other units. */
  String beside(Link link) {
    String[] parts = link.getDestination().split("#", 2);
    if (parts.length < 2) {
      return "";
    }
    Optional<String> page = parts[0].isEmpty() ? own() : page(parts[0]);
    return page.map(id -> beside.of(id, parts[1], PlainWords.of(link))).orElse("");
  }

  /** The id of the page that a relative link leads to. */
  Optional<String> page(String destination) {
    return within(withoutFragment(destination))
        .filter(target -> target.endsWith(ENDING))
        .map(LinkTargets::id)
        .filter(isPage);
  }

  private Optional<String> own() {
    return Optional.of(path).filter(own -> own.endsWith(ENDING)).map(LinkTargets::id);
  }

  private static String id(String page) {
    return page.substring(page.lastIndexOf('/') + 1, page.length() - ENDING.length());
  }

  /** The path, relative to the workspace, of a picture that may be shown. */
  public Optional<String> picture(String destination) {
    return within(destination)
        .filter(target -> PICTURE.matcher(target.toLowerCase(Locale.ROOT)).matches());
  }

  /** An address on the web or of a mailbox, which is shown and never opened. */
  Optional<String> address(String destination) {
    return Optional.of(destination).filter(text -> ADDRESS.matcher(text).matches());
  }

  private static String withoutFragment(String destination) {
    int hash = destination.indexOf('#');
    return hash < 0 ? destination : destination.substring(0, hash);
  }

  private Optional<String> within(String destination) {
    boolean elsewhere =
        destination.isEmpty()
            || destination.startsWith("/")
            || destination.contains("\\")
            || destination.indexOf('\0') >= 0
            || SCHEME.matcher(destination).matches();
    if (elsewhere) {
      return Optional.empty();
    }
    int folder = path.lastIndexOf('/');
    return WorkspacePath.normalised(path.substring(0, folder + 1) + destination)
        .filter(target -> target.startsWith(ARTICLES));
  }
}
