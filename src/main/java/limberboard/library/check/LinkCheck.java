package limberboard.library.check;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import limberboard.library.body.BodyScan;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderQuotes;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;

/** Checks the links, pictures and HTML of pages' bodies, and follows links to pages. */
public final class LinkCheck {
  private static final Pattern SCHEME = Pattern.compile("(?i)[a-z][a-z0-9+.-]*:.*");
  private static final Pattern REMOTE =
      Pattern.compile("(?i)(src|href)\\s*+=\\s*+[\"']?+\\s*+(https?:)?+//");

  private final WorkspaceFolders folders;
  private final Map<String, ParsedPage> byPath;
  private final Function<Path, Optional<String>> pictureWrong;

  /**
   * A check of links between these pages.
   *
   * @param folders the workspace
   * @param pages all pages
   * @param pictureWrong says what is wrong with a picture's file
   */
  public LinkCheck(
      WorkspaceFolders folders,
      Collection<ParsedPage> pages,
      Function<Path, Optional<String>> pictureWrong) {
    this.folders = folders;
    this.byPath =
        pages.stream().collect(Collectors.toMap(ParsedPage::path, page -> page, (a, b) -> a));
    this.pictureWrong = pictureWrong;
  }

  /** Reports what is wrong in a body. */
  void check(ParsedPage page, Report report) {
    page.scan().links().forEach(link -> link(page, link, report));
    page.quotes().header().forEach(found -> headerLink(page, found, report));
    page.scan().pictures().forEach(picture -> picture(page, picture, report));
    page.scan().html().forEach(html -> html(html, report));
  }

  /** The id of the page that a link leads to, if it leads to one. */
  public Optional<String> pageOf(ParsedPage from, String target) {
    return SCHEME.matcher(target).matches()
        ? Optional.empty()
        : resolve(from, target).map(byPath::get).map(ParsedPage::id);
  }

  /** The page that a link leads to, if it leads to one; one without a path leads to its own. */
  Optional<ParsedPage> at(ParsedPage from, String target) {
    if (target.startsWith("#")) {
      return Optional.of(from);
    }
    return SCHEME.matcher(target).matches()
        ? Optional.empty()
        : resolve(from, target).map(path -> path.equals(from.path()) ? from : byPath.get(path));
  }

  /** Checks a picture that the header names at a pointer. */
  void headerPicture(ParsedPage page, String target, String pointer, Report report) {
    wrongPicture(page, target)
        .ifPresent(wrong -> report.error(pointer, wrong.wrong(), wrong.right()));
  }

  private void link(ParsedPage page, BodyScan.Spot link, Report report) {
    String target = link.text();
    if (SCHEME.matcher(target).matches()) {
      String lower = target.toLowerCase(Locale.ROOT);
      boolean known = lower.matches("(?s)(https?|mailto|tel):.*");
      if (!known) {
        report.errorOnLine(
            link.line(), "link", "leads to \"" + target + "\"", "link to a page of the library");
      }
      return;
    }
    String plain = target.split("#", 2)[0];
    if (plain.isEmpty()) {
      return;
    }
    Optional<String> path = resolve(page, target);
    if (path.isEmpty()) {
      report.errorOnLine(
          link.line(),
          "link",
          "\"" + target + "\" leads out of the workspace",
          "link to a page of the library");
    } else if (!byPath.containsKey(path.get()) && !isFile(path.get())) {
      report.errorOnLine(
          link.line(),
          "link",
          "\"" + target + "\" leads nowhere",
          Nearest.to(path.get(), byPath.keySet())
              .map(near -> "did you mean " + near + "?")
              .orElse("write the page or take the link out"));
    }
  }

  private void headerLink(ParsedPage page, HeaderQuotes.Found found, Report report) {
    if (at(page, found.quote().target()).isEmpty()) {
      report.error(
          found.pointer(),
          "\"" + found.quote().target() + "\" leads nowhere",
          "quote a figure of a material or a topic");
    }
  }

  private void picture(ParsedPage page, BodyScan.Spot picture, Report report) {
    wrongPicture(page, picture.text())
        .ifPresent(
            wrong -> report.errorOnLine(picture.line(), "picture", wrong.wrong(), wrong.right()));
  }

  /**
   * What is wrong with a picture.
   *
   * @param wrong what is wrong: with its name, or with its file
   * @param right what to do about that
   */
  private record WrongPicture(String wrong, String right) {
    static Optional<WrongPicture> named(String wrong) {
      return Optional.of(new WrongPicture(wrong, "name a drawing below articles/pictures"));
    }

    static WrongPicture file(String wrong) {
      return new WrongPicture(wrong, "put that right in the file, or name another drawing");
    }
  }

  private Optional<WrongPicture> wrongPicture(ParsedPage page, String target) {
    if (SCHEME.matcher(target).matches() || target.startsWith("//")) {
      return WrongPicture.named("\"" + target + "\" lies outside the library and is never loaded");
    }
    Optional<String> path = resolve(page, target);
    if (path.isEmpty()) {
      return WrongPicture.named("\"" + target + "\" leads out of the workspace");
    }
    if (!isFile(path.get())) {
      return WrongPicture.named("there is no picture \"" + target + "\"");
    }
    return pictureWrong
        .apply(folders.root().resolve(path.get()))
        .map(wrong -> WrongPicture.file("\"" + target + "\" " + wrong));
  }

  private static void html(BodyScan.Spot html, Report report) {
    boolean remote = REMOTE.matcher(html.text()).find();
    report.warningOnLine(
        html.line(),
        "HTML",
        remote
            ? "refers to something outside the library, which is never loaded"
            : "is shown as text",
        "write Markdown instead");
  }

  private boolean isFile(String path) {
    return Files.isRegularFile(folders.root().resolve(path));
  }

  private Optional<String> resolve(ParsedPage from, String target) {
    return folders.linked(from.path(), target);
  }
}
