package limberboard.history;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.history.parts.PartChanges;
import limberboard.history.parts.TextParts;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.problem.Nearest;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;

/** The versions of a page: which there are, what each changed, and what stood in it. */
public final class PageHistory {
  private final HistoryFolder place;
  private final VersionWalk walk;

  /** The versions of this workspace's pages. */
  public PageHistory(HistoryFolder place) {
    this.place = place;
    this.walk = new VersionWalk(place);
  }

  /**
   * Finds a page's file by the page's id or by its path, also of a page that was taken away or
   * renamed.
   *
   * @return its path within the workspace, as it is now or was when it was last there
   * @throws HistoryTrouble when no page was ever called so
   */
  public String find(String page) throws IOException {
    if (page.contains("/")) {
      String path = place.folders().relative(place.folders().root().resolve(page));
      if (Files.exists(place.folders().root().resolve(path))
          || !walk.of(place.inRepository(path)).isEmpty()) {
        return path;
      }
    }
    String name = page.substring(page.lastIndexOf('/') + 1) + (page.endsWith(".md") ? "" : ".md");
    List<Path> pages = pages();
    Optional<Path> there =
        pages.stream().filter(file -> file.getFileName().toString().equals(name)).findFirst();
    if (there.isPresent()) {
      return place.folders().relative(there.get());
    }
    Optional<String> last = walk.lastPlace(name);
    if (last.isEmpty()) {
      List<String> ids =
          pages.stream().map(file -> file.getFileName().toString().replace(".md", "")).toList();
      throw new HistoryTrouble(
          "there is no page \"" + page + "\" and never was", Nearest.advice(page, ids, "try find"));
    }
    Optional<String> now = walk.renamedTo(last.get());
    return place.inWorkspace(now.orElse(last.get()));
  }

  private List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.walk(place.folders().articles())) {
      return files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
    }
  }

  /**
   * The versions of a page, the latest first.
   *
   * @param path its path within the workspace
   */
  public List<Version> of(String path) throws IOException {
    try {
      return walk.of(place.inRepository(path));
    } catch (MissingObjectException e) {
      throw new HistoryTrouble(
          "a part of the history is missing in " + place.repository().getDirectory(),
          "pull again, or take the folder .git from another copy");
    }
  }

  /**
   * What stood in the page in a version.
   *
   * @return the text, to the letter; empty when the page was not there
   */
  public Optional<String> text(Version version) throws IOException {
    return text(ObjectId.fromString(version.id()), version.path());
  }

  private Optional<String> text(ObjectId commit, String path) throws IOException {
    try (RevWalk commits = new RevWalk(place.repository());
        TreeWalk tree =
            TreeWalk.forPath(
                commits.getObjectReader(),
                place.inRepository(path),
                commits.parseCommit(commit).getTree())) {
      if (tree == null || tree.getFileMode(0).getObjectType() != Constants.OBJ_BLOB) {
        return Optional.empty();
      }
      byte[] bytes =
          commits.getObjectReader().open(tree.getObjectId(0)).getCachedBytes(TextFile.LARGEST * 20);
      return Optional.of(new String(bytes, StandardCharsets.UTF_8));
    }
  }

  /**
   * What stands in the page's file now.
   *
   * @param path its path within the workspace
   */
  public Optional<String> now(String path) throws IOException {
    Path file = place.folders().root().resolve(path);
    return FileBytes.isThere(file)
        ? Optional.of(
            new String(FileBytes.read(file, TextFile.LARGEST * 20), StandardCharsets.UTF_8))
        : Optional.empty();
  }

  /**
   * What a version changed in the page, in plain words, such as {@code minutes: 60 → 90}.
   *
   * @param versions the page's versions, the latest first
   * @param at which of them
   */
  public List<String> changes(List<Version> versions, int at) throws IOException {
    Version version = versions.get(at);
    if (!version.isThere()) {
      return List.of("the page was taken away");
    }
    Optional<Version> before =
        at + 1 < versions.size() ? Optional.of(versions.get(at + 1)) : Optional.empty();
    if (before.isEmpty() || !before.get().isThere()) {
      return List.of(before.isEmpty() ? "the page was begun" : "the page was put back");
    }
    Stream<String> renamed =
        before.get().path().equals(version.path())
            ? Stream.empty()
            : Stream.of("renamed from " + before.get().path());
    return Stream.concat(
            renamed,
            PartChanges.between(
                TextParts.of(version.path(), text(before.get()).orElse("")),
                TextParts.of(version.path(), text(version).orElse("")))
                .stream())
        .toList();
  }

  /**
   * One of the versions by its id.
   *
   * @param versions the page's versions
   * @param id its id or the first letters of it, four at least
   * @throws HistoryTrouble when none or several begin so
   */
  public static Version named(List<Version> versions, String id) throws HistoryTrouble {
    List<Version> found = versions.stream().filter(each -> each.id().startsWith(id)).toList();
    if (id.length() < 4 || found.isEmpty()) {
      throw new HistoryTrouble(
          "this page has no version \"" + id + "\"",
          "its versions: "
              + String.join(", ", versions.stream().limit(8).map(Version::shortId).toList()));
    }
    if (found.size() > 1) {
      throw new HistoryTrouble("several versions begin with " + id, "write more letters of it");
    }
    return found.get(0);
  }

  /**
   * The version that stood at the end of a day; empty when the page was not begun yet.
   *
   * @param versions the page's versions, the latest first
   * @param zone where the day ends
   */
  public static Optional<Version> on(List<Version> versions, LocalDate day, ZoneId zone) {
    var end = day.plusDays(1).atStartOfDay(zone);
    return versions.stream().filter(each -> each.when().isBefore(end)).findFirst();
  }
}
