package limberboard.writing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.history.GitRun;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.search.UpdateReport;
import limberboard.sharing.CutShortPull;
import limberboard.sharing.PullOutcome;
import limberboard.writing.change.Renamer;
import limberboard.writing.save.KeptTexts;

/**
 * Kills programs that keep, save, rename, index, merge and push pages without a pause, each at a
 * moment of its own, and looks after each whether the workspace opens with every page whole and
 * everything that was acknowledged. Run it with {@code KILLS SEED}; the exit code is 1 when
 * something was lost.
 */
final class WritingKills {
  private static final int LONGEST = 600;
  private static final int ROUND = 50;
  private static final int TURNS = 60;

  private final Path folder;
  private final WorkspaceFolders folders;
  private final UserFolders user;
  private final Random random;
  private final List<String> wrong = new ArrayList<>();
  private final Map<Integer, Integer> saved = new HashMap<>();
  private final Map<String, Integer> killed = new TreeMap<>();
  private final Map<String, Integer> acknowledged = new TreeMap<>();
  private final LibraryReader reader;
  private final OtherCopy other;
  private int replayed;
  private int mergesLeft;
  private int rebuilt;
  private int litter;

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
    for (int i = 0; i < KilledPages.COUNT; i++) {
      Path file = folders.root().resolve(KilledPages.path(i));
      Files.createDirectories(file.getParent());
      Files.write(file, KilledPages.page(i, 0, 0, KilledPages.FIRST_HUB, new Random(i)).bytes());
      saved.put(i, 0);
    }
    this.reader = new LibraryReader(folders);
    this.other = OtherCopy.of(folders, folder);
  }

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("writing-kills");
    WritingKills kills = new WritingKills(folder, Long.parseLong(args[1]));
    kills.run(Integer.parseInt(args[0]), System.out::println).forEach(System.out::println);
    kills.wrong().forEach(each -> System.out.println("LOST: " + each));
    if (kills.wrong().isEmpty()) {
      delete(folder);
    } else {
      System.out.println("the workspace is left in " + folder);
    }
    System.exit(kills.wrong().isEmpty() ? 0 : 1);
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
    KilledChild next =
        new KilledChild(folder, random.nextLong(), "-XX:ArchiveClassesAtExit=" + archive);
    next.ready();
    next.end();
    String shared = "-XX:SharedArchiveFile=" + archive;
    for (int i = 1; i <= count; i++) {
      other.change(random);
      next = new KilledChild(folder, random.nextLong(), shared);
      next.ready();
      List<String> said = next.killedAfter(random.nextInt(LONGEST));
      killed.merge(workAtTheEnd(said), 1, Integer::sum);
      open("after kill " + i + ": ", said);
      if (i % ROUND == 0 || i == count) {
        share("after kill " + i + ", shared: ");
        progress.accept(i + " killed " + killed + ", " + wrong.size() + " lost");
      }
    }
    return List.of(
        count + " programs killed; at that moment they did " + words(killed),
        "acknowledged: " + words(acknowledged),
        "pages lost or half-written, kept texts lost: " + wrong.size(),
        replayed + " renamings and " + mergesLeft + " merges that were cut short gone on with",
        rebuilt + " times the index was built anew, otherwise it was right or brought up to date",
        litter + " times a temporary or lock file was left beside the pages");
  }

  private static String words(Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .map(each -> each.getKey() + " " + each.getValue())
        .collect(Collectors.joining(", "));
  }

  /** What the program was doing when it was killed. */
  private static String workAtTheEnd(List<String> said) {
    String work = "nothing";
    for (String line : said) {
      if (line.startsWith("doing ")) {
        work = line.substring("doing ".length());
      } else if (line.startsWith("done ")) {
        work = "nothing";
      }
    }
    return work;
  }

  /** Opens the workspace as the program does, and looks at everything. */
  private void open(String at, List<String> said) throws IOException {
    Renamer renamer = new Renamer(folders);
    replayed += Files.exists(folders.root().resolve(".renaming")) ? 1 : 0;
    mergesLeft += new CutShortPull(folders).finish() ? 1 : 0;
    hold(!Files.exists(folders.root().resolve(".git/limberboard-pull")), at + "a pull is left");
    hold(renamer.finish().isEmpty(), at + "the renaming could not be gone on with");
    hold(!Files.exists(folders.root().resolve(".renaming")), at + "a renaming is left");
    Library library = reader.read();
    hold(library.problems().isEmpty(), at + "problems " + library.problems());
    List<String> hubs =
        library.pages().stream()
            .<String>map(Page::id)
            .filter(id -> id.startsWith(KilledPages.HUB))
            .toList();
    hold(hubs.size() == 1, at + "hubs " + hubs);
    String hub = hubs.isEmpty() ? "" : hubs.get(0);
    hold(
        library.linksTo(hub).size() == KilledPages.COUNT,
        at + "links " + library.linksTo(hub).size());
    String log = Files.readString(folders.boats().resolve("knot/log.csv"));
    hold(
        log.equals("date,work,engine-hours,note\n2026-05-01," + hub + ",,as it was\n"),
        at + "the log: " + log);
    said(at, said, hub);
    pages(at, said.contains("merged"), hub);
    index(at, library, hub);
    try (Stream<Path> files = Files.list(folders.root().resolve("articles/topics"))) {
      boolean any = files.anyMatch(file -> file.getFileName().toString().startsWith("."));
      litter += any ? 1 : 0;
    }
  }

  /** Every page is whole, and no older than it was. */
  private void pages(String at, boolean merged, String hub) throws IOException {
    for (int i = 0; i < KilledPages.COUNT; i++) {
      String text = Files.readString(folders.root().resolve(KilledPages.path(i)));
      Optional<Integer> version = KilledPages.version(text);
      hold(version.isPresent(), at + "page " + i + " is half-written");
      hold(version.orElse(-1) >= saved.get(i), at + "page " + i + " lost " + saved.get(i));
      hold(text.contains(hub + ".md"), at + "page " + i + " does not name " + hub);
      hold(
          !merged || KilledPages.there(text) == other.sent(i),
          at + "page " + i + " lacks what was merged, " + other.sent(i));
      saved.put(i, version.orElse(saved.get(i)));
    }
  }

  /** Goes on with what was cut short, so that both copies are the same in the end. */
  private void share(String at) throws IOException {
    if (OtherCopy.pull(folders) instanceof PullOutcome.Open open) {
      wrong.add(at + "a conflict " + open.conflicts());
      return;
    }
    OtherCopy.push(folders);
    other.takeOver();
    hold(!Files.exists(folders.root().resolve(".git/limberboard-pull")), at + "a merge is left");
    for (int i = 0; i < KilledPages.COUNT; i++) {
      String text = Files.readString(folders.root().resolve(KilledPages.path(i)));
      hold(KilledPages.there(text) == other.sent(i), at + "page " + i + " lacks its other part");
      hold(text.equals(other.text(i)), at + "page " + i + " differs in the other copy");
    }
    GitRun git = new GitRun(folders.root());
    git.run("fsck", "--strict").good();
    hold(git.run("status", "--porcelain").good().isEmpty(), at + "git status");
  }

  /** What the program acknowledged before it was killed. */
  private void said(String at, List<String> said, String hub) throws IOException {
    Map<Integer, Integer> keeps = new HashMap<>();
    String renamed = "";
    for (String line : said) {
      String[] words = line.split(" ");
      acknowledged.merge(words[0], words[0].startsWith("do") ? 0 : 1, Integer::sum);
      switch (words[0]) {
        case "saved" -> {
          saved.put(Integer.parseInt(words[1]), Integer.parseInt(words[2]));
          keeps.remove(Integer.parseInt(words[1]));
        }
        case "kept" -> keeps.put(Integer.parseInt(words[1]), Integer.parseInt(words[2]));
        case "renamed" -> renamed = words[1];
        case "index" -> rebuilt += words[1].equals("anew") ? 1 : 0;
        case "doing", "done", "merged", "pushed", "behind" -> {}
        default -> wrong.add(at + line);
      }
    }
    acknowledged.values().removeIf(count -> count == 0);
    hold(
        renamed.isEmpty() || KilledPages.number(hub) >= KilledPages.number(renamed),
        at + renamed + " became " + hub);
    keptTexts(at, keeps);
  }

  private void keptTexts(String at, Map<Integer, Integer> keeps) throws IOException {
    KeptTexts texts = new KeptTexts(user, folders);
    List<KeptTexts.Offered> left = texts.left(folders);
    for (KeptTexts.Offered each : left) {
      hold(KilledPages.version(each.kept().text().text()).isPresent(), at + "half a kept text");
    }
    keeps.forEach(
        (page, version) -> {
          boolean there =
              left.stream()
                  .anyMatch(
                      each ->
                          each.kept().path().equals(KilledPages.path(page))
                              && KilledPages.version(each.kept().text().text()).orElse(-1)
                                  >= version);
          boolean onDisk = versionOnDisk(page) >= version;
          hold(there || onDisk, at + "kept text " + page + " " + version + " is lost");
        });
    for (KeptTexts.Offered each : left) {
      texts.forget(each);
    }
  }

  private int versionOnDisk(int page) {
    try {
      return KilledPages.version(Files.readString(folders.root().resolve(KilledPages.path(page))))
          .orElse(-1);
    } catch (IOException e) {
      return -1;
    }
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

  /** Git may still be tidying up behind a push, and make files meanwhile: then once more. */
  private static void delete(Path folder) throws IOException, InterruptedException {
    for (int turn = 1; Files.exists(folder); turn++) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(file);
        }
      } catch (DirectoryNotEmptyException | UncheckedIOException e) {
        if (turn == TURNS) {
          throw e;
        }
        TimeUnit.SECONDS.sleep(1);
      }
    }
  }
}
