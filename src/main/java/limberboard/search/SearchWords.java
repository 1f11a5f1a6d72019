package limberboard.search;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Problem;

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

  /** Copies the collections. */
  public SearchWords {
    groups = groups.stream().map(List::copyOf).toList();
    spellings = Collections.unmodifiableMap(new LinkedHashMap<>(spellings));
    problems = List.copyOf(problems);
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
    if (!FileBytes.isThere(file)) {
      return List.of();
    }
    String name = folders.relative(file);
    if (!folders.holds(file)) {
      problems.add(
          Problem.error(
              name,
              0,
              "",
              "is a link that leads out of the workspace",
              "keep it as an ordinary file in its place"));
      return List.of();
    }
    try {
      String text = new String(FileBytes.read(file, TextFile.LARGEST), StandardCharsets.UTF_8);
      List<String> lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
      if (lines.size() <= Limits.WORD_LINES) {
        return lines;
      }
      problems.add(
          Problem.error(
              name,
              Limits.WORD_LINES + 1,
              "",
              "has " + lines.size() + " lines, and is used only up to here",
              "keep it under " + Limits.WORD_LINES + " lines"));
      return lines.subList(0, Limits.WORD_LINES);
    } catch (FileBytes.Refused e) {
      problems.add(Problem.error(name, 0, "", e.wrong(), e.right()));
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
