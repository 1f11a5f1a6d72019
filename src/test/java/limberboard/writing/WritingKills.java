package limberboard.writing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.search.UpdateReport;
import limberboard.writing.change.RenameOutcome;
import limberboard.writing.change.Renamer;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/**
 * Kills programs that keep, save, rename and index pages without a pause, each at a moment of its
 * own, and looks after each whether the workspace opens with every page whole and everything that
 * was acknowledged. Run it with {@code KILLS SEED}; the exit code is 1 when something was lost.
 */
final class WritingKills {
  /** Pages that are saved; each names the page that is renamed. */
  private static final int PAGES = 24;

  private static final int LONGEST = 250;
  private static final String HUB = "hub";
  private static final String FIRST_HUB = "hub-0";

  private final Path folder;
  private final WorkspaceFolders folders;
  private final UserFolders user;
  private final Random random;
  private final List<String> wrong = new ArrayList<>();
  private final Map<Integer, Integer> saved = new HashMap<>();
  private final LibraryReader reader;
  private int replayed;
  private int rebuilt;
  private int litter;
  private int saves;
  private int renames;
  private int kept;

  WritingKills(Path folder, long seed) throws IOException {
    this.folder = folder;
    TestWorkspace workspace = new TestWorkspace(folder.resolve("yard"));
    this.folders = workspace.folders();
    this.user = new UserFolders(folder.resolve("c"), folder.resolve("s"), folder.resolve("k"));
    this.random = new Random(seed);
    workspace.write(
        "articles/procedures/hub-0.md",
        "---\n"
            + "title: The hub\n"
            + "system: hull\n"
            + "work: mend\n"
            + "skill: owner\n"
            + "minutes: 5\n"
            + "---\n"
            + "1. Do it.\n");
    workspace.write(
        "boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    workspace.write(
        "boats/knot/log.csv", "date,work,engine-hours,note\n2026-05-01,hub-0,,as it was\n");
    for (int i = 0; i < PAGES; i++) {
      Path file = folders.root().resolve(path(i));
      Files.createDirectories(file.getParent());
      Files.write(file, page(i, 0, FIRST_HUB, new Random(i)).bytes());
      saved.put(i, 0);
    }
    this.reader = new LibraryReader(folders);
  }

  public static void main(String[] args) throws Exception {
    if (args[0].equals("write")) {
      new Writer(Path.of(args[1]), Long.parseLong(args[2])).run();
      return;
    }
    Path folder = Files.createTempDirectory("writing-kills");
    WritingKills kills = new WritingKills(folder, Long.parseLong(args[1]));
    kills.run(Integer.parseInt(args[0]), System.out::println).forEach(System.out::println);
    kills.wrong().forEach(each -> System.out.println("LOST: " + each));
    delete(folder);
    System.exit(kills.wrong().isEmpty() ? 0 : 1);
  }

  private static String path(int page) {
    return "articles/topics/page-" + page + ".md";
  }

  /** A version of a page; its last line says by a number whether all of it is there. */
  private static PageText page(int page, int version, String hub, Random random) {
    StringBuilder text = new StringBuilder();
    text.append("---\r\ntitle: Page ").append(page).append("\r\n---\r\n");
    text.append("Go by [the hub](../procedures/").append(hub).append(".md).\r\n\r\n");
    text.append("Version ").append(version).append(".\r\n\r\n");
    int lines = random.nextInt(120);
    for (int i = 0; i < lines; i++) {
      text.append("Line ").append(random.nextInt()).append(".\r\n");
    }
    return new PageText(text + "\r\nEnd " + sum(text.toString()) + ".\r\n");
  }

  /** Of everything but the name of the hub. */
  private static int sum(String text) {
    return text.replaceAll("hub-[0-9]+", HUB).hashCode();
  }

  private static Optional<Integer> version(String text) {
    int end = text.indexOf("\r\nEnd ");
    int version = text.indexOf("Version ");
    if (end < 0
        || version < 0
        || !text.endsWith("\r\nEnd " + sum(text.substring(0, end)) + ".\r\n")) {
      return Optional.empty();
    }
    return Optional.of(
        Integer.parseInt(
            text.substring(version + "Version ".length(), text.indexOf('.', version))));
  }

  /** What was lost, if anything. */
  List<String> wrong() {
    return List.copyOf(wrong);
  }

  private void hold(boolean holds, String what) {
    if (!holds) {
      wrong.add(what);
    }
  }

  /** Kills so many programs, one after another. */
  List<String> run(int count, Consumer<String> progress) throws IOException, InterruptedException {
    Path archive = folder.resolve("classes.jsa");
    Child next = new Child(folder, random.nextLong(), "-XX:ArchiveClassesAtExit=" + archive);
    next.ready();
    next.end();
    String shared = "-XX:SharedArchiveFile=" + archive;
    next = new Child(folder, random.nextLong(), shared);
    for (int i = 1; i <= count; i++) {
      next.ready();
      List<String> said = next.killedAfter(random.nextInt(LONGEST));
      String at = "after kill " + i + ": ";
      open(at, said);
      next = new Child(folder, random.nextLong(), shared);
      if (i % 50 == 0) {
        progress.accept(i + " killed, " + wrong.size() + " lost, replayed " + replayed);
      }
    }
    next.ready();
    next.killedAfter(0);
    open("at the end: ", List.of());
    return List.of(
        count + " programs killed while they kept, saved, renamed and indexed pages",
        saves + " saves, " + renames + " renamings and " + kept + " kept texts acknowledged",
        "pages lost or half-written, kept texts lost: " + wrong.size(),
        replayed + " renamings that were cut short gone on with at the next opening",
        rebuilt + " times the index was built anew, otherwise it was right or brought up to date",
        litter + " times a temporary or lock file was left beside the pages");
  }

  /** Opens the workspace as the program does, and looks at everything. */
  private void open(String at, List<String> said) throws IOException {
    Renamer renamer = new Renamer(folders);
    replayed += Files.exists(folders.root().resolve(".renaming")) ? 1 : 0;
    hold(renamer.finish().isEmpty(), at + "the renaming could not be gone on with");
    hold(!Files.exists(folders.root().resolve(".renaming")), at + "a renaming is left");
    Library library = reader.read();
    hold(library.problems().isEmpty(), at + "problems " + library.problems());
    List<String> hubs =
        library.pages().stream().<String>map(Page::id).filter(id -> id.startsWith(HUB)).toList();
    hold(hubs.size() == 1, at + "hubs " + hubs);
    String hub = hubs.isEmpty() ? "" : hubs.get(0);
    hold(library.linksTo(hub).size() == PAGES, at + "links " + library.linksTo(hub).size());
    String log = Files.readString(folders.boats().resolve("knot/log.csv"));
    hold(
        log.equals("date,work,engine-hours,note\n2026-05-01," + hub + ",,as it was\n"),
        at + "the log: " + log);
    said(at, said, hub);
    Map<Integer, Integer> now = new HashMap<>();
    for (int i = 0; i < PAGES; i++) {
      String text = Files.readString(folders.root().resolve(path(i)));
      Optional<Integer> version = version(text);
      hold(version.isPresent(), at + "page " + i + " is half-written");
      hold(version.orElse(-1) >= saved.get(i), at + "page " + i + " lost " + saved.get(i));
      hold(text.contains(hub + ".md"), at + "page " + i + " does not name " + hub);
      now.put(i, version.orElse(saved.get(i)));
    }
    saved.putAll(now);
    index(at, library, hub);
    try (Stream<Path> files = Files.list(folders.root().resolve("articles/topics"))) {
      boolean any = files.anyMatch(file -> file.getFileName().toString().startsWith("."));
      litter += any ? 1 : 0;
    }
  }

  /** What the program acknowledged before it was killed. */
  private void said(String at, List<String> said, String hub) throws IOException {
    Map<Integer, Integer> keeps = new HashMap<>();
    String renamed = "";
    for (String line : said) {
      String[] words = line.split(" ");
      switch (words[0]) {
        case "saved" -> {
          saves++;
          saved.put(Integer.parseInt(words[1]), Integer.parseInt(words[2]));
          keeps.remove(Integer.parseInt(words[1]));
        }
        case "kept" -> {
          kept++;
          keeps.put(Integer.parseInt(words[1]), Integer.parseInt(words[2]));
        }
        case "renamed" -> {
          renames++;
          renamed = words[1];
        }
        case "index" -> rebuilt += words[1].equals("anew") ? 1 : 0;
        default -> wrong.add(at + line);
      }
    }
    hold(renamed.isEmpty() || number(hub) >= number(renamed), at + renamed + " became " + hub);
    KeptTexts texts = new KeptTexts(user, folders);
    List<KeptTexts.Offered> left = texts.left(folders);
    for (KeptTexts.Offered each : left) {
      hold(version(each.kept().text().text()).isPresent(), at + "half a kept text");
    }
    keeps.forEach(
        (page, version) -> {
          boolean there =
              left.stream()
                  .anyMatch(
                      each ->
                          each.kept().path().equals(path(page))
                              && version(each.kept().text().text()).orElse(-1) >= version);
          boolean onDisk = versionOnDisk(page) >= version;
          hold(there || onDisk, at + "kept text " + page + " " + version + " is lost");
        });
    for (KeptTexts.Offered each : left) {
      texts.forget(each);
    }
  }

  private int versionOnDisk(int page) {
    try {
      return version(Files.readString(folders.root().resolve(path(page)))).orElse(-1);
    } catch (IOException e) {
      return -1;
    }
  }

  private static int number(String hub) {
    return hub.isEmpty() ? -1 : Integer.parseInt(hub.substring(FIRST_HUB.length() - 1));
  }

  private void index(String at, Library library, String hub) throws IOException {
    try (SearchIndex index = SearchIndex.open(folders)) {
      UpdateReport report = index.update(library);
      rebuilt += report.added() == library.pages().size() ? 1 : 0;
      UpdateReport again = index.update(library);
      hold(again.added() + again.changed() + again.removed() == 0, at + "index " + again);
      boolean found =
          index.find(SearchQuery.of("the hub")).hits().stream()
              .anyMatch(hit -> hit.id().equals(hub));
      hold(found, at + "the index does not find " + hub);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** What the other programs do. */
  private static final class Writer {
    private final WorkspaceFolders folders;
    private final KeptTexts texts;
    private final LibraryReader reader;
    private final Random random;

    Writer(Path folder, long seed) {
      folders = new WorkspaceFolders(folder.resolve("yard"));
      UserFolders user =
          new UserFolders(folder.resolve("c"), folder.resolve("s"), folder.resolve("k"));
      texts = new KeptTexts(user, folders);
      reader = new LibraryReader(folders);
      random = new Random(seed);
    }

    void run() throws IOException {
      Library library = reader.read();
      say("ready");
      Path stop = folders.root().resolveSibling("stop");
      while (!Files.exists(stop)) {
        for (int i = 0; i < 2; i++) {
          save(random.nextInt(PAGES));
        }
        library = reader.read();
        rename(library);
        library = reader.read();
        try (SearchIndex index = SearchIndex.open(folders)) {
          UpdateReport report = index.update(library);
          say("index " + (report.added() == library.pages().size() ? "anew" : "updated"));
        }
      }
    }

    private static void say(String words) {
      System.out.println(words);
      System.out.flush();
    }

    private void save(int page) throws IOException {
      PageFile file = new PageFile(folders, path(page));
      PageText old = ((PageFile.Ready) file.open()).page().orElseThrow();
      int version = version(old.text()).orElseThrow() + 1;
      String hub = old.text().replaceAll("(?s).*/(hub-[0-9]+)\\.md.*", "$1");
      PageText now = page(page, version, hub, random);
      texts.keep(KeptText.of(path(page), Optional.of(old), Instant.EPOCH, now));
      say("kept " + page + " " + version);
      SaveOutcome outcome = file.save(Optional.of(old), now);
      if (outcome instanceof SaveOutcome.Saved) {
        say("saved " + page + " " + version);
        texts.forget(path(page));
      } else {
        say("not saved: " + outcome);
      }
    }

    private void rename(Library library) {
      String hub =
          library.pages().stream()
              .<String>map(Page::id)
              .filter(id -> id.startsWith(HUB))
              .findFirst()
              .orElseThrow();
      String to = HUB + "-" + (number(hub) + 1);
      RenameOutcome outcome = new Renamer(folders).rename(library, hub, to);
      say(outcome instanceof RenameOutcome.Renamed ? "renamed " + to : "not renamed: " + outcome);
    }
  }

  /** Another program. */
  private static final class Child {
    private final Process process;
    private final Path said;
    private final Path stop;

    Child(Path folder, long seed, String option) throws IOException {
      stop = folder.resolve("stop");
      said = Files.createTempFile(folder, "said", ".out");
      process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-XX:+UseSerialGC",
                  option,
                  "-Xlog:disable",
                  "-cp",
                  System.getProperty("java.class.path"),
                  WritingKills.class.getName(),
                  "write",
                  folder.toString(),
                  Long.toString(seed))
              .redirectOutput(said.toFile())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
    }

    void ready() throws IOException, InterruptedException {
      while (process.isAlive() && Files.size(said) == 0) {
        TimeUnit.MILLISECONDS.sleep(2);
      }
    }

    /** Lets it come to an end by itself. */
    void end() throws IOException, InterruptedException {
      Files.writeString(stop, "");
      process.waitFor();
      Files.delete(stop);
      Files.delete(said);
    }

    /** Kills it; a last word that was cut short does not count. */
    List<String> killedAfter(int milliseconds) throws IOException, InterruptedException {
      TimeUnit.MILLISECONDS.sleep(milliseconds);
      if (!process.isAlive()) {
        return List.of("the program ended by itself");
      }
      process.destroyForcibly().waitFor();
      String text = Files.readString(said, StandardCharsets.UTF_8);
      Files.delete(said);
      return text.substring(0, text.lastIndexOf('\n') + 1)
          .lines()
          .filter(line -> !line.equals("ready"))
          .toList();
    }
  }
}
