package limberboard.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * A workspace of any size on the disk, made of the repository's: its articles and words as they
 * are, and then its procedures, materials and topics over and over under other ids, of whose text a
 * tenth of the words is exchanged for made-up ones. Always the same for one seed and one library.
 *
 * <p>As a program: {@code MadeWorkspace FOLDER PAGES SEED}.
 */
public final class MadeWorkspace {
  private static final List<String> REPEATED = List.of("procedures", "materials", "topics");
  private static final double EXCHANGED = 0.1;

  private MadeWorkspace() {}

  /** Makes one: where, how many pages, and the seed. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    if (Files.exists(folder)) {
      throw new IOException(folder + " is there already; name a new folder");
    }
    int pages = make(Path.of(""), folder, Integer.parseInt(args[1]), Long.parseLong(args[2]));
    System.out.println(pages + " pages in " + folder);
  }

  /**
   * Makes a workspace.
   *
   * @param from the workspace that it is made of
   * @param pages how many pages it is to have; no fewer than {@code from} has
   * @return how many pages it has
   */
  static int make(Path from, Path to, int pages, long seed) throws IOException {
    int made = 0;
    List<Path> repeated = new ArrayList<>();
    for (String top : List.of("articles", "index/words")) {
      for (Path file : files(from.resolve(top))) {
        Path target = to.resolve(from.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
        boolean page = file.toString().endsWith(".md");
        made += page ? 1 : 0;
        if (page && REPEATED.contains(file.getParent().getFileName().toString())) {
          repeated.add(file);
        }
      }
    }
    Files.createDirectories(to.resolve("boats"));
    Random random = new Random(seed);
    List<String> words = SyntheticLibrary.words(random);
    for (int i = 0; made < pages; i++, made++) {
      Path file = repeated.get(i % repeated.size());
      Path target = to.resolve(from.relativize(file).toString());
      Files.writeString(
          target.resolveSibling("made-" + i + ".md"),
          variant(Files.readString(file, StandardCharsets.UTF_8), words, random));
    }
    return made;
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** The header stays, but for the title; words in links and tables stay as well. */
  private static String variant(String page, List<String> words, Random random) {
    StringBuilder text = new StringBuilder();
    boolean body = false;
    int rules = 0;
    for (String line : page.split("\n", -1)) {
      if (line.startsWith("title:")) {
        text.append("title: Made ").append(words.get(random.nextInt(words.size()))).append('\n');
        continue;
      }
      if (!body || line.startsWith("|")) {
        text.append(line).append('\n');
        rules += line.equals("---") ? 1 : 0;
        body = rules == 2;
        continue;
      }
      for (String word : line.split(" ")) {
        boolean plain = word.matches("[a-z]{3,}");
        boolean exchanged = plain && random.nextDouble() < EXCHANGED;
        text.append(exchanged ? words.get(random.nextInt(words.size())) : word).append(' ');
      }
      text.append('\n');
    }
    return text.toString();
  }
}
