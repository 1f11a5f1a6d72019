package limberboard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import limberboard.library.Library;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.page.Topic;

/**
 * A large library made of a small one: its pages over and over, of each of which some words are
 * exchanged for made-up ones, so that the dictionary grows as well. Always the same for one seed.
 */
final class SyntheticLibrary {
  private static final int SEED = 20_240_501;
  private static final int MADE_UP_WORDS = 60_000;
  private static final double EXCHANGED = 0.1;

  private SyntheticLibrary() {}

  /** A library of so many pages. */
  static Library of(Library small, int pages) {
    Random random = new Random(SEED);
    List<String> words = words(random);
    List<Page<?>> originals = List.copyOf(small.pages());
    List<Page<?>> all = new ArrayList<>(originals);
    for (int i = originals.size(); i < pages; i++) {
      all.add(variant(originals.get(i % originals.size()), i, words, random));
    }
    return new Library(all, Map.of(), List.of());
  }

  /** The library with one of its made-up pages changed. */
  static Library withChange(Library library, int change) {
    List<Page<?>> pages = new ArrayList<>(library.pages());
    Page<?> last = pages.get(pages.size() - 1);
    pages.set(pages.size() - 1, withBody(last, last.body() + "\n\nChange number " + change + "."));
    return new Library(pages, Map.of(), List.of());
  }

  private static Page<?> variant(Page<?> page, int number, List<String> words, Random random) {
    StringBuilder body = new StringBuilder();
    for (String word : page.body().split(" ")) {
      boolean exchanged = random.nextDouble() < EXCHANGED;
      body.append(exchanged ? words.get(random.nextInt(words.size())) : word).append(' ');
    }
    Head head =
        new Head(
            page.title() + " " + words.get(random.nextInt(words.size())),
            page.head().summary(),
            page.head().saidAs(),
            page.head().system(),
            page.head().zones(),
            page.head().fits(),
            List.of(),
            Map.of());
    String id = "page-" + number;
    return new Page<>(id, "articles/topics/" + id + ".md", head, new Topic(), body.toString(), 1);
  }

  private static <D extends limberboard.library.page.Details> Page<D> withBody(
      Page<D> page, String body) {
    return new Page<>(page.id(), page.path(), page.head(), page.details(), body, page.bodyLine());
  }

  /** Made-up words, the same for one seed. */
  static List<String> words(Random random) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < MADE_UP_WORDS; i++) {
      StringBuilder word = new StringBuilder();
      for (int syllable = 0; syllable < 2 + random.nextInt(3); syllable++) {
        word.append("bcdfghklmnprstvw".charAt(random.nextInt(16)));
        word.append("aeiou".charAt(random.nextInt(5)));
        word.append("lmnrst".charAt(random.nextInt(6)));
      }
      words.add(word.toString());
    }
    return words;
  }
}
