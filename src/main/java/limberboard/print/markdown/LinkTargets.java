package limberboard.print.markdown;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.regex.Pattern;

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

  private final String path;
  private final Predicate<String> isPage;
  private final BinaryOperator<String> beside;

  /**
   * Targets as seen from one page.
   *
   * @param path the page's file, relative to the workspace
   * @param isPage whether there is a page with an id
   */
  public LinkTargets(String path, Predicate<String> isPage) {
    this(path, isPage, (place, written) -> "");
  }

  /**
   * The same, where some links quote figures.
   *
   * @param beside what stands behind the text of a link with a name behind {@code #}, of its target
   *     and that text; nothing where it quotes no figure
   */
  public LinkTargets(String path, Predicate<String> isPage, BinaryOperator<String> beside) {
    this.path = path;
    this.isPage = isPage;
    this.beside = beside;
  }

  /** What stands behind the text of a link, such as the same in other units. */
  String beside(String destination, String written) {
    return destination.indexOf('#') < 0 ? "" : beside.apply(destination, written);
  }

  /** The id of the page that a relative link leads to. */
  Optional<String> page(String destination) {
    return within(withoutFragment(destination))
        .filter(target -> target.endsWith(".md"))
        .map(target -> target.substring(target.lastIndexOf('/') + 1, target.length() - 3))
        .filter(isPage);
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
