package limberboard.findings;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;

/**
 * The one step that mends a name or a link that leads nowhere, where only one page can be meant:
 * one with this id elsewhere, or else a single one at most two letters off. Immutable.
 *
 * @param file the file, relative to the workspace
 * @param line the line, from 1
 * @param old what stands there
 * @param now what is to stand there
 */
public record LinkRepair(String file, int line, String old, String now) implements FileRepair {
  private static final int MOST_OFF = 2;
  private static final int LEAST_LENGTH = 5;
  private static final Pattern LINK = Pattern.compile("\"(.+)\" leads nowhere");
  private static final Pattern NAME = Pattern.compile("there is no ([a-z]+) \"(.+)\"");

  /** The repair of a problem; empty where it is not certain. */
  public static Optional<LinkRepair> of(Problem problem, Library library) {
    if (problem.line() < 1 || !problem.file().endsWith(".md")) {
      return Optional.empty();
    }
    Matcher link = LINK.matcher(problem.wrong());
    if (link.matches()) {
      return ofLink(problem, link.group(1), library);
    }
    Matcher name = NAME.matcher(problem.wrong());
    return name.matches()
        ? ofName(problem, name.group(1), name.group(2), library)
        : Optional.empty();
  }

  private static Optional<LinkRepair> ofLink(Problem problem, String target, Library library) {
    String[] parts = target.split("#", 2);
    String file = parts[0].substring(parts[0].lastIndexOf('/') + 1);
    if (!file.endsWith(".md")) {
      return Optional.empty();
    }
    List<String> ids = library.pages().stream().<String>map(Page::id).toList();
    return only(file.substring(0, file.length() - ".md".length()), ids)
        .flatMap(library::page)
        .map(
            page ->
                relative(problem.file(), page.path()) + (parts.length > 1 ? "#" + parts[1] : ""))
        .map(now -> new LinkRepair(problem.file(), problem.line(), target, now));
  }

  private static String relative(String from, String to) {
    Path folder = Path.of(from).getParent();
    Path path = folder == null ? Path.of(to) : folder.relativize(Path.of(to));
    return path.toString().replace('\\', '/');
  }

  private static Optional<LinkRepair> ofName(
      Problem problem, String kind, String id, Library library) {
    return Arrays.stream(Kind.values())
        .filter(each -> each.word().equals(kind))
        .findFirst()
        .map(each -> library.pages().stream().filter(page -> page.kind() == each))
        .flatMap(pages -> only(id, pages.<String>map(Page::id).toList()))
        .map(now -> new LinkRepair(problem.file(), problem.line(), id, now));
  }

  /** The only id that can be meant. */
  private static Optional<String> only(String id, Collection<String> ids) {
    if (ids.contains(id)) {
      return Optional.of(id);
    }
    List<String> near =
        id.length() < LEAST_LENGTH || id.length() > 200
            ? List.of()
            : ids.stream().filter(each -> isNear(each, id)).toList();
    return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
  }

  private static boolean isNear(String each, String id) {
    return Math.abs(each.length() - id.length()) <= MOST_OFF
        && Nearest.distance(each, id) <= MOST_OFF;
  }

  @Override
  public String deed() {
    return "“" + old + "” becomes “" + now + "”";
  }

  @Override
  public String words() {
    return deed() + " in line " + line + " of " + file + ".";
  }

  @Override
  public Problem gone() {
    return Problem.error(
        file, line, "", "has changed: \"" + old + "\" stands there no more", "look at it again");
  }

  @Override
  public Optional<String> in(String text) {
    int from = 0;
    for (int i = 1; i < line; i++) {
      from = text.indexOf('\n', from) + 1;
      if (from == 0) {
        return Optional.empty();
      }
    }
    int end = text.indexOf('\n', from);
    String row = text.substring(from, end < 0 ? text.length() : end);
    Matcher found =
        Pattern.compile("(?<![A-Za-z0-9/.-])" + Pattern.quote(old) + "(?![A-Za-z0-9/-])")
            .matcher(row);
    if (!found.find()) {
      return Optional.empty();
    }
    String mended = row.substring(0, found.start()) + now + row.substring(found.end());
    return Optional.of(text.substring(0, from) + mended + text.substring(from + row.length()));
  }
}
