package limberboard.moving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import limberboard.library.LibraryReader;
import limberboard.library.file.FileBytes;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * Brings an archive into a workspace: looked at first, then all of it or, should the program be
 * killed, all of it the next time.
 */
public final class Import {
  private final WorkspaceFolders folders;
  private final Archive archive;
  private final PendingImport pending;

  /** An import of this archive. */
  public Import(WorkspaceFolders folders, Archive archive) {
    this.folders = folders;
    this.archive = archive;
    this.pending = new PendingImport(folders);
  }

  /**
   * What it would change; nothing is written into the workspace.
   *
   * @throws IOException when the workspace cannot be read
   */
  public ImportPlan plan() throws IOException {
    List<String> added = new ArrayList<>();
    List<String> changed = new ArrayList<>();
    List<String> kept = new ArrayList<>();
    int same = 0;
    for (Map.Entry<String, byte[]> file : archive.files().entrySet()) {
      String path = place(file.getKey());
      Path there = folders.root().resolve(path);
      mustBeAFile(there, path);
      if (!Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
        added.add(path);
        continue;
      }
      byte[] here = FileBytes.read(there, Integer.MAX_VALUE - 8);
      if (Arrays.equals(here, file.getValue())) {
        same++;
      } else {
        (isOwn(path, here) ? kept : changed).add(path);
      }
    }
    return new ImportPlan(added, changed, same, kept, problems(added, changed));
  }

  /** Boats go where this workspace keeps them. */
  private String place(String path) {
    String boats = folders.relative(folders.boats());
    int slash = path.indexOf('/');
    String top = path.substring(0, slash);
    return top.equals("boats") || top.equals("demo-boats") ? boats + path.substring(slash) : path;
  }

  private void mustBeAFile(Path there, String path) throws ArchiveTrouble {
    Path folder = there.getParent();
    while (folder != null && !Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      folder = folder.getParent();
    }
    boolean inFolder = folder != null && Files.isDirectory(folder) && folders.holds(folder);
    boolean free =
        !Files.exists(there, LinkOption.NOFOLLOW_LINKS)
            || Files.isRegularFile(there, LinkOption.NOFOLLOW_LINKS);
    if (!inFolder || !free) {
      throw new ArchiveTrouble(
          path + " would lie where a link or something else is in this workspace",
          "take that away first; nothing was written");
    }
  }

  /** Whether a page is marked as somebody's own, be the rest of its header ever so broken. */
  private static boolean isOwn(String path, byte[] page) {
    return path.endsWith(".md")
        && new String(page, StandardCharsets.UTF_8)
            .lines()
            .skip(1)
            .takeWhile(line -> !line.stripTrailing().equals("---"))
            .anyMatch(line -> line.matches("own:\\s*\\S.*"));
  }

  /** What reading the pages would say, tried in a folder of its own. */
  private List<String> problems(List<String> added, List<String> changed) throws IOException {
    Path trial = trial();
    try {
      WorkspaceFolders tried = new WorkspaceFolders(trial);
      copy(folders.articles(), tried.articles());
      Set<String> before = said(tried);
      Set<String> wanted = new HashSet<>(added);
      wanted.addAll(changed);
      for (Map.Entry<String, byte[]> file : archive.files().entrySet()) {
        if (file.getKey().startsWith("articles/") && wanted.contains(file.getKey())) {
          Path to = trial.resolve(file.getKey());
          Files.createDirectories(to.getParent());
          Files.write(to, file.getValue());
        }
      }
      return said(tried).stream().filter(each -> !before.contains(each)).sorted().toList();
    } catch (IOException e) {
      throw notTried(e);
    } finally {
      PendingImport.delete(trial);
    }
  }

  private static Path trial() throws IOException {
    try {
      return Files.createTempDirectory("limberboard-import");
    } catch (IOException e) {
      throw notTried(e);
    }
  }

  private static ArchiveTrouble notTried(IOException why) {
    return new ArchiveTrouble(
        "the pages could not be tried in the folder for temporary files: "
            + FileTrouble.reason(why),
        "make room in "
            + System.getProperty("java.io.tmpdir")
            + " and try again; nothing was changed");
  }

  private static Set<String> said(WorkspaceFolders tried) throws IOException {
    Set<String> said = new HashSet<>();
    for (Problem problem : new LibraryReader(tried).read().problems()) {
      said.add(problem.toString());
    }
    return said;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.sorted(Comparator.naturalOrder()).toList()) {
        Path target = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)) {
          Files.createDirectories(target);
        } else if (Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)) {
          Files.copy(each, target);
        }
      }
    }
  }

  /**
   * Does what a plan says.
   *
   * @return the files written, by path
   * @throws ArchiveTrouble when the workspace has changed since the plan was made; nothing is
   *     written then
   */
  public List<String> apply(ImportPlan plan) throws IOException {
    if (!plan().equals(plan)) {
      throw new ArchiveTrouble(
          "the workspace has changed since the archive was looked at", "look at it again");
    }
    Set<String> wanted = new HashSet<>(plan.added());
    wanted.addAll(plan.changed());
    Map<String, byte[]> files = new TreeMap<>();
    archive
        .files()
        .forEach(
            (name, bytes) -> {
              if (wanted.contains(place(name))) {
                files.put(place(name), bytes);
              }
            });
    pending.write(files);
    return List.copyOf(files.keySet());
  }
}
