package limberboard.sharing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.library.file.FileBatch;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.SafeFiles;
import org.eclipse.jgit.lib.ObjectReader;

/** Brings the files of the workspace from one version to another, each written whole. */
final class WorkFiles {
  /** How many files are waited for at once. */
  private static final int AT_ONCE = 256;

  private final HistoryFolder place;
  private final Map<String, Leaf> before;
  private final Map<String, Leaf> after;

  WorkFiles(HistoryFolder place, Map<String, Leaf> before, Map<String, Leaf> after) {
    this.place = place;
    this.before = before;
    this.after = after;
  }

  /** The paths that differ, in order. */
  List<String> changed() {
    Set<String> paths = new HashSet<>(before.keySet());
    paths.addAll(after.keySet());
    return paths.stream()
        .filter(
            path ->
                !Optional.ofNullable(before.get(path)).equals(Optional.ofNullable(after.get(path))))
        .sorted()
        .toList();
  }

  /** A file as it is to be; null when it is to be gone. */
  Leaf after(String path) {
    return after.get(path);
  }

  /**
   * Refuses what must not be brought into a folder: links, other repositories, paths out of it, two
   * names that differ only by capital letters.
   */
  void mustBeSafe() throws IOException {
    Map<String, String> small = new TreeMap<>();
    for (String path : after.keySet()) {
      String other = small.put(path.toLowerCase(Locale.ROOT), path);
      if (other != null && (!before.containsKey(path) || !before.containsKey(other))) {
        throw refused(path, "differs from " + other + " only by capital letters");
      }
    }
    for (String path : changed()) {
      Leaf leaf = after.get(path);
      if (leaf != null && !leaf.isFile()) {
        throw refused(path, "is a link or another repository");
      }
      Path file = place.file(path).normalize();
      boolean within = file.startsWith(place.repository().getWorkTree().toPath().normalize());
      boolean odd =
          Arrays.stream(path.split("/", -1))
              .anyMatch(
                  part ->
                      part.isEmpty()
                          || part.equals(".")
                          || part.equals("..")
                          || part.toLowerCase(Locale.ROOT).equals(".git"));
      if (!within || odd || path.contains("\\")) {
        throw refused(path, "does not lie within the workspace");
      }
    }
  }

  private static HistoryTrouble refused(String path, String why) {
    return new HistoryTrouble(
        path + ", which the other copy has, " + why + "; nothing was changed here",
        "have it taken out of the other copy");
  }

  /** Files of the workspace that are neither as before nor as after, so that they must not go. */
  List<String> inTheWay() throws IOException {
    List<String> found = new ArrayList<>();
    try (ObjectReader reader = place.repository().newObjectReader()) {
      for (String path : changed()) {
        if (!is(path, before.get(path), reader) && !is(path, after.get(path), reader)) {
          found.add(path);
        }
      }
    }
    return found;
  }

  private boolean is(String path, Leaf leaf, ObjectReader reader) throws IOException {
    Path file = place.file(path);
    boolean isThere = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    if (leaf == null || !isThere) {
      return leaf == null && !isThere;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    byte[] bytes = leaf.bytes(reader);
    long size = Files.size(file);
    return size == bytes.length && Arrays.equals(Files.readAllBytes(file), bytes)
        || size > bytes.length && Arrays.equals(withoutMarks(Files.readAllBytes(file)), bytes);
  }

  /** A text as Git keeps it where it was told to write lines as Windows does. */
  private byte[] withoutMarks(byte[] bytes) {
    if (!place.repository().getConfig().getBoolean("core", "autocrlf", false)) {
      return bytes;
    }
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return text.replace("\r\n", "\n").getBytes(StandardCharsets.ISO_8859_1);
  }

  /**
   * Writes and takes away files.
   *
   * @param progress is told how far it is; nothing is stopped on the way
   * @throws HistoryTrouble when one cannot be written; what was written already stays, and the next
   *     pull goes on from there
   */
  void write(HowFar progress) throws IOException {
    List<String> changed = changed();
    try (ObjectReader reader = place.repository().newObjectReader()) {
      for (int from = 0; from < changed.size(); from += AT_ONCE) {
        List<String> some = changed.subList(from, Math.min(changed.size(), from + AT_ONCE));
        try (FileBatch batch = new FileBatch()) {
          int done = from;
          Set<String> prepared = prepare(some, batch, reader);
          for (String path : some) {
            progress.step("Writing files", done++, changed.size());
            one(path, prepared.contains(path), batch, reader);
          }
        }
      }
    }
  }

  /** Takes away what a killed program has left beside the files. */
  void clear() throws IOException {
    FileBatch.clear(changed().stream().map(place::file).toList());
  }

  /** Prepares what is to be written; which paths those are. */
  private Set<String> prepare(List<String> paths, FileBatch batch, ObjectReader reader)
      throws IOException {
    Set<String> prepared = new HashSet<>();
    String at = paths.get(0);
    try {
      for (String path : paths) {
        at = path;
        Leaf leaf = after.get(path);
        if (leaf != null && !is(path, leaf, reader)) {
          batch.prepare(place.file(path), leaf.bytes(reader));
          prepared.add(path);
        }
      }
      batch.sync();
      return prepared;
    } catch (IOException e) {
      throw notWritten(at, e);
    }
  }

  private void one(String path, boolean prepared, FileBatch batch, ObjectReader reader)
      throws IOException {
    Path file = place.file(path);
    try {
      if (is(path, after.get(path), reader)) {
        return;
      }
      if (!is(path, before.get(path), reader)) {
        throw new HistoryTrouble(
            path + " was changed while the pull was writing",
            "pull again: what was changed is recorded first");
      }
      if (prepared) {
        batch.place(file);
      } else if (after.get(path) == null) {
        Files.deleteIfExists(file);
        emptyFolders(file.getParent());
      } else {
        SafeFiles.write(file, after.get(path).bytes(reader));
      }
    } catch (HistoryTrouble e) {
      throw e;
    } catch (IOException e) {
      throw notWritten(path, e);
    }
  }

  private static HistoryTrouble notWritten(String path, IOException e) {
    return new HistoryTrouble(
        path + " could not be written: " + FileTrouble.reason(e),
        "mend that and pull again; nothing is lost, and the pull goes on where it stopped");
  }

  /** Takes away folders that have become empty, as git does; those of the kinds stay. */
  private void emptyFolders(Path folder) {
    Path articles = place.folders().articles();
    Path at = folder;
    while (at != null
        && at.startsWith(place.folders().root())
        && !at.equals(place.folders().root())
        && !at.equals(articles)
        && !articles.equals(at.getParent())) {
      if (!at.toFile().delete()) {
        return;
      }
      at = at.getParent();
    }
  }
}
