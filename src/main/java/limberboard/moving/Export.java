package limberboard.moving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.file.FileBytes;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;

/** Packs a workspace, or a part of it that can be opened by itself. */
public final class Export {
  private static final List<String> ALL = List.of("articles", "index/words", "boats", "demo-boats");

  private final WorkspaceFolders folders;
  private final Library library;

  /** Exports from this workspace. */
  public Export(WorkspaceFolders folders, Library library) {
    this.folders = folders;
    this.library = library;
  }

  /**
   * What was packed.
   *
   * @param bytes the archive
   * @param files the paths in it, in order
   * @param added ids of pages that were not chosen but are referred to, so that they come too
   */
  public record Packed(byte[] bytes, List<String> files, Set<String> added) {}

  /**
   * Packs what is wished for. A part has the chosen pages with all that they refer to, their
   * pictures and the words for search; boats only with the whole.
   *
   * @throws ArchiveTrouble when something wished for is not there, or a file cannot be packed
   */
  public Packed pack(ExportWish wish) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    Set<String> added = new TreeSet<>();
    if (wish.isWhole()) {
      for (String folder : ALL) {
        take(files, folder, "");
      }
    } else {
      Set<String> chosen = chosen(wish);
      if (chosen.isEmpty()) {
        throw new ArchiveTrouble("no page is of that kind", "choose otherwise; nothing was packed");
      }
      Set<String> ids = withReferences(chosen);
      added.addAll(ids);
      added.removeAll(chosen);
      StringBuilder texts = new StringBuilder();
      for (String id : ids) {
        Path file = folders.root().resolve(library.page(id).orElseThrow().path());
        byte[] bytes = bytes(file);
        files.put(folders.relative(file), bytes);
        texts.append(new String(bytes, StandardCharsets.UTF_8));
      }
      take(files, "articles/pictures", texts.toString());
      take(files, "index/words", "");
    }
    return new Packed(ArchiveWriter.bytes(files), List.copyOf(files.keySet()), added);
  }

  private Set<String> chosen(ExportWish wish) throws ArchiveTrouble {
    Set<String> ids = new TreeSet<>();
    for (String id : wish.pages()) {
      mustBe(id, library.page(id).isPresent(), "page");
      ids.add(id);
    }
    if (wish.model().isPresent()) {
      mustBe(wish.model().get(), library.model(wish.model().get()).isPresent(), "model");
    }
    if (wish.model().isPresent() || wish.system().isPresent()) {
      library.pages().stream()
          .filter(page -> wish.model().stream().allMatch(model -> isFor(page, model)))
          .filter(
              page ->
                  wish.system().stream().allMatch(page.head().system().stream().toList()::contains))
          .forEach(page -> ids.add(page.id()));
    }
    return ids;
  }

  private static boolean isFor(Page<?> page, String model) {
    List<String> models = page.head().fits().model();
    boolean other = page.kind() == Kind.MODEL && !page.id().equals(model);
    return !other && (models.isEmpty() || models.contains(model));
  }

  private void mustBe(String id, boolean is, String what) throws ArchiveTrouble {
    if (!is) {
      List<String> ids = library.pages().stream().<String>map(Page::id).toList();
      throw new ArchiveTrouble(
          "there is no " + what + " \"" + id + "\"", Nearest.advice(id, ids, "try find"));
    }
  }

  private Set<String> withReferences(Set<String> chosen) {
    Set<String> all = new TreeSet<>();
    Deque<String> open = new ArrayDeque<>(chosen);
    while (!open.isEmpty()) {
      String id = open.pop();
      if (all.add(id)) {
        open.addAll(library.linksFrom(id));
      }
    }
    return all;
  }

  /** Takes the files of a folder, of pictures those that the texts name. */
  private void take(SortedMap<String, byte[]> files, String folder, String texts)
      throws IOException {
    Path root = folders.root().resolve(folder);
    if (!Files.isDirectory(root)) {
      return;
    }
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        String path = folders.relative(file);
        boolean named = texts.isEmpty() || texts.contains(file.getFileName().toString());
        boolean ours = !path.contains("/letters/") && ArchiveName.wrong(path).isEmpty();
        if (named && ours && folders.holds(file)) {
          files.put(path, bytes(file));
        }
      }
    }
  }

  private byte[] bytes(Path file) throws ArchiveTrouble {
    try {
      return FileBytes.read(file, (int) ArchiveList.LARGEST_FILE);
    } catch (FileBytes.Refused e) {
      throw new ArchiveTrouble(folders.relative(file) + " " + e.wrong(), e.right());
    }
  }
}
