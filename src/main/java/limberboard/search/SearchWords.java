package limberboard.search;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.Problem;
import limberboard.library.WorkspaceFolders;

/**
 * The workspace's hand-kept words for search: synonyms and trade spellings. Immutable.
 *
 * @param groups groups of words or phrases that stand for each other
 * @param spellings how people write a word or phrase, to the word or phrase they mean
 * @param problems lines of the files that could not be used
 */
public record SearchWords(
    List<List<String>> groups, Map<String, String> spellings, List<Problem> problems) {

  /** The synonyms' file in the words folder. */
  public static final String SYNONYMS = "synonyms.txt";

  /** The spellings' file in the words folder. */
  public static final String SPELLINGS = "spellings.txt";

  private static final long MOST_BYTES = 4_000_000;

  /** Copies the collections. */
  public SearchWords {
    groups = groups.stream().map(List::copyOf).toList();
    spellings = Collections.unmodifiableMap(new LinkedHashMap<>(spellings));
    problems = List.copyOf(problems);
  }

  /** No words at all. */
  public static SearchWords none() {
    return new SearchWords(List.of(), Map.of(), List.of());
  }

  /** Reads both files; one that is not there is empty, one that cannot be read is a problem. */
  public static SearchWords read(WorkspaceFolders folders) {
    List<Problem> problems = new ArrayList<>();
    SynonymLines synonyms = new SynonymLines(folders.relative(folders.words().resolve(SYNONYMS)));
    SpellingLines spellings =
        new SpellingLines(folders.relative(folders.words().resolve(SPELLINGS)));
    List<List<String>> groups =
        synonyms.parse(lines(folders, folders.words().resolve(SYNONYMS), problems), problems);
    Map<String, String> meant =
        spellings.parse(lines(folders, folders.words().resolve(SPELLINGS), problems), problems);
    return new SearchWords(groups, meant, problems);
  }

  private static List<String> lines(WorkspaceFolders folders, Path file, List<Problem> problems) {
    if (!Files.exists(file)) {
      return List.of();
    }
    String name = folders.relative(file);
    try {
      if (Files.size(file) > MOST_BYTES) {
        problems.add(Problem.error(name, 0, "", "the file is too long", "at most 4 MB"));
        return List.of();
      }
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      return (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
    } catch (IOException e) {
      problems.add(
          Problem.error(name, 0, "", "the file cannot be read", "a readable UTF-8 text file"));
      return List.of();
    }
  }

  /** A digest of everything that decides how text is indexed: the groups and the spellings. */
  String digest() {
    Digest digest = new Digest();
    groups.forEach(digest::add);
    spellings.forEach((written, meant) -> digest.add(List.of(written, meant)));
    return digest.hex();
  }
}
