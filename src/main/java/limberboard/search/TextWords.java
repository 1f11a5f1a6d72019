package limberboard.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import limberboard.library.file.WorkspaceFolders;

/**
 * The words of any text as search reads them, for whoever weighs texts by other means: trade
 * spellings put right, stems, and the marks of the groups of words that stand for each other.
 * Immutable, safe for use by several threads.
 */
public final class TextWords {
  private final Analysis analysis;
  private final SpellingTable spellings;
  private final StopWords stopWords = StopWords.english();
  private final FaultWords faultWords = FaultWords.english();

  private TextWords(SearchWords words) {
    analysis = new Analysis(words);
    spellings = new SpellingTable(words, analysis);
  }

  /**
   * One word of a text.
   *
   * @param word the word that is meant, in small letters, without accents
   * @param stem its stem
   * @param marks the marks of the groups that it belongs to, alone or as part of a phrase
   * @param start where it begins in the text
   * @param end where it ends
   * @param stop whether it belongs to the grammar of sentences and says nothing by itself
   * @param faint whether it counts for little
   * @param fault whether it tells of a fault
   */
  public record TextWord(
      String word,
      String stem,
      Set<String> marks,
      int start,
      int end,
      boolean stop,
      boolean faint,
      boolean fault) {
    /** Copies the set. */
    public TextWord {
      marks = Set.copyOf(marks);
    }

    /** The same word in another place of a text. */
    public TextWord at(int from, int to) {
      return new TextWord(word, stem, marks, from, to, stop, faint, fault);
    }
  }

  /**
   * Reads a workspace's hand-kept words.
   *
   * @param more further groups of words or phrases that stand for each other
   */
  public static TextWords read(WorkspaceFolders folders, List<List<String>> more) {
    SearchWords kept = SearchWords.read(folders);
    List<List<String>> groups = new ArrayList<>(kept.groups());
    groups.addAll(more);
    return new TextWords(new SearchWords(groups, kept.spellings(), List.of()));
  }

  /** The stem of a word in small letters. */
  public static String stem(String word) {
    return Analysis.stem(word);
  }

  /** The words of a text, in order. */
  public List<TextWord> of(String text) {
    List<Token> tokens = new ArrayList<>();
    spellings.correct(analysis.tokens(text)).forEach(stretch -> tokens.addAll(stretch.meant()));
    List<String> stems = tokens.stream().map(token -> Analysis.stem(token.word())).toList();
    List<Set<String>> marks = new ArrayList<>();
    stems.forEach(stem -> marks.add(new HashSet<>()));
    for (int i = 0; i < stems.size(); i++) {
      for (WordGroups.Match match : analysis.groups().at(stems, i)) {
        marks.subList(i, i + match.length()).forEach(each -> each.add(match.mark()));
      }
    }
    List<TextWord> words = new ArrayList<>();
    for (int i = 0; i < stems.size(); i++) {
      Token token = tokens.get(i);
      words.add(
          new TextWord(
              token.word(),
              stems.get(i),
              marks.get(i),
              token.start(),
              token.end(),
              stopWords.isStop(token.word()),
              stopWords.isFaint(token.word()),
              faultWords.tells(stems.get(i))));
    }
    return words;
  }
}
