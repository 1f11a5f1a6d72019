package limberboard.proofread.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.words.Phrases;
import limberboard.words.Sentences;

/**
 * What the library's materials and tools are called: their titles and the phrases people use for
 * them. Finds them in sentences, the longest name first. Immutable.
 */
public final class ThingNames {
  private static final String AFTER_NAME = "[,(:].*";
  private static final String SIZE = "\\b\\d[\\d.,]*\\s*(mm²?|ml|l|m|g|kg|A|V|%)?\\b|\\bA4\\b";
  private static final int LONGEST = 5;
  private static final Pattern COMMA = Pattern.compile("[,:()–]");

  private final Map<List<String>, Set<String>> names = new LinkedHashMap<>();

  /**
   * The names of all materials and tools.
   *
   * @param common names that mean too much on a boat to name a thing: lamp, line, plug
   * @param more further names, by the id of the thing
   */
  public ThingNames(Library library, Collection<String> common, Map<String, List<String>> more) {
    Set<List<String>> passed = new LinkedHashSet<>();
    common.forEach(word -> passed.add(Phrases.stems(word)));
    for (Page<Material> page : library.all(Material.class)) {
      List<String> called = called(page);
      called.addAll(more.getOrDefault(page.id(), List.of()));
      for (String name : called) {
        List<String> stems = Phrases.stems(name);
        if (!stems.isEmpty() && stems.size() <= LONGEST && !passed.contains(stems)) {
          names.computeIfAbsent(stems, none -> new TreeSet<>()).add(page.id());
        }
      }
    }
  }

  private static List<String> called(Page<Material> page) {
    List<String> called = new ArrayList<>();
    called.add(head(page.title()));
    called.add(page.title().replaceAll(AFTER_NAME, ""));
    called.add(Sentences.spoken(page.id()));
    called.addAll(page.head().saidAs());
    return called;
  }

  private static String head(String title) {
    return title.replaceAll(AFTER_NAME, "").replaceAll(SIZE, " ").strip();
  }

  /**
   * A thing named in a sentence.
   *
   * @param name as it is called there
   * @param ids of the pages that may be meant
   * @param at where it stands, in words from the beginning
   * @param length in words
   */
  public record Mention(String name, Set<String> ids, int at, int length) {
    /** Copies the set. */
    public Mention {
      ids = Set.copyOf(ids);
    }
  }

  /**
   * The things that a sentence names; no word belongs to two of them, and no name spans a comma. An
   * alcohol-free cloth names no alcohol.
   */
  public List<Mention> in(Sentence sentence) {
    List<Mention> found = new ArrayList<>();
    int from = 0;
    for (String part : COMMA.split(sentence.text())) {
      Sentence clause = Sentence.one(part);
      for (int i = 0; i < clause.words().size(); ) {
        Optional<Mention> mention = at(clause, i, from);
        mention.ifPresent(found::add);
        i += mention.map(Mention::length).orElse(1);
      }
      from += clause.words().size();
    }
    return found;
  }

  private Optional<Mention> at(Sentence clause, int at, int from) {
    List<String> stems = clause.stems();
    for (int length = Math.min(LONGEST, stems.size() - at); length > 0; length--) {
      Set<String> ids = names.get(stems.subList(at, at + length));
      boolean free = at + length < stems.size() && clause.words().get(at + length).equals("free");
      if (ids != null && !free) {
        String name = String.join(" ", clause.words().subList(at, at + length));
        return Optional.of(new Mention(name, ids, from + at, length));
      }
    }
    return Optional.empty();
  }
}
