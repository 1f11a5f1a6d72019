package limberboard.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;

/**
 * A workspace to be spoilt: a part of the demo's, and beside it a few files that are never touched,
 * whose commands must go on working whatever happens to the others.
 */
final class FuzzWorkspace {
  /** The boat whose files may be spoilt. */
  static final String BOAT = "dunlin";

  /** The boat whose files are left alone, and whose pages are. */
  static final String SOUND_BOAT = "sound";

  /** A page that is left alone. */
  static final String SOUND_PAGE = "sound-topic";

  private static final List<String> SYMPTOMS =
      List.of("water-in-forward-cabin", "rust-under-deck-fitting", "outboard-will-not-start");
  private static final int MOST_PAGES = 30;

  private final Path root;
  private final TreeMap<String, byte[]> files = new TreeMap<>();

  /** Makes one in an empty folder from the demo's workspace. */
  FuzzWorkspace(Path root, Path demo) throws IOException {
    this.root = root;
    WorkspaceFolders folders = new WorkspaceFolders(demo);
    Library library = new LibraryReader(folders).read();
    for (String id : pages(library)) {
      copy(demo, library.page(id).orElseThrow().path());
    }
    for (String folder :
        List.of("articles/pictures", "demo-boats/" + BOAT, "demo-boats/cases", "index/words")) {
      try (Stream<Path> listed = Files.list(demo.resolve(folder))) {
        for (Path file : listed.filter(Files::isRegularFile).toList()) {
          copy(demo, folders.relative(file));
        }
      }
    }
    sound();
  }

  /** The symptoms, their mends, and what these refer to, up to a number. */
  private static Set<String> pages(Library library) {
    Set<String> ids = new TreeSet<>(SYMPTOMS);
    List<String> open = new ArrayList<>(SYMPTOMS);
    ids.add("tarnwick-26");
    open.add("tarnwick-26");
    for (int i = 0; i < open.size() && ids.size() < MOST_PAGES; i++) {
      for (String to : library.linksFrom(open.get(i))) {
        if (ids.add(to)) {
          open.add(to);
        }
      }
    }
    return ids;
  }

  private void copy(Path demo, String file) throws IOException {
    byte[] bytes = Files.readAllBytes(demo.resolve(file));
    files.put(file, bytes);
    write(file, bytes);
  }

  private void sound() throws IOException {
    sound("articles/topics/sound-topic.md", "---\ntitle: A sound topic\n---\nSound words.\n");
    sound(
        "articles/models/sound-20.md",
        """
        ---
        title: Sound 20
        built: 2010/2020
        drawing: {profile: ../pictures/sound.svg, deck: ../pictures/sound.svg}
        zones: [{id: sound-cabin, title: Cabin, profile: "0,0 10,0 10,10"}]
        equipment: [{id: sound-seal, title: Seal, choices: [{id: sound-lip, title: Lip, default: 2000/..}]}]
        ---
        """);
    sound(
        "articles/procedures/sound-service.md",
        """
        ---
        title: Sound service
        system: hull
        fits: {model: sound-20}
        work: service
        skill: owner
        minutes: 30
        interval: {every: P1Y, phase: lay-up, left-undone: costs, need: should}
        ---
        1. Do it.
        """);
    sound(
        "articles/symptoms/sound-leak.md",
        """
        ---
        title: A sound leak
        fits: {model: sound-20}
        zones: [sound-cabin]
        causes: [{id: seal, title: The seal leaks, weight: 3, mend: sound-service}]
        checks:
          - {id: look, ask: "Wet?", how: Look., minutes: 1, answers: [yes, no], finds: {yes: {seal: always}}}
        ---
        """);
    sound("demo-boats/sound/boat.yaml", "name: Sound\nmodel: sound-20\nhull: 7\nbuilt: 2015\n");
    sound("demo-boats/sound/log.csv", "date,work,engine-hours,note\n2025-05-01,launched,,\n");
    sound(
        "articles/pictures/sound.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0"
            + " 0h9\"/></svg>");
  }

  private void sound(String file, String text) throws IOException {
    write(file, text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  /** The folder. */
  Path root() {
    return root;
  }

  /** The files that may be spoilt, by name. */
  List<String> files() {
    return List.copyOf(files.keySet());
  }

  /** What a file holds when it is not spoilt. */
  byte[] original(String file) {
    return files.get(file).clone();
  }

  /** Writes a file. */
  void write(String file, byte[] bytes) throws IOException {
    Path path = root.resolve(file);
    Files.createDirectories(path.getParent());
    Files.write(path, bytes);
  }

  /** Puts back what was spoilt, and takes away what was added. */
  void restore(Set<String> spoilt) throws IOException {
    for (String file : spoilt) {
      if (files.containsKey(file)) {
        remove(root.resolve(file));
        write(file, files.get(file));
      } else {
        remove(root.resolve(file));
      }
    }
  }

  private static void remove(Path path) throws IOException {
    if (!Files.exists(path, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> all = Files.walk(path)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}
