package limberboard.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import limberboard.library.problem.Nearest;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.spell.DirectSpellChecker;
import org.apache.lucene.search.spell.SuggestMode;
import org.apache.lucene.search.spell.SuggestWord;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.StringHelper;
import org.apache.lucene.util.automaton.Automata;
import org.apache.lucene.util.automaton.Automaton;
import org.apache.lucene.util.automaton.CompiledAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;
import org.apache.lucene.util.automaton.Operations;

/**
 * The words of one state of the index: which there are, which resemble a misspelt one, and how one
 * may go on that is still being typed. Looks only at dictionaries, never at pages. Safe for use by
 * several threads.
 */
final class Vocabulary {
  private static final int SHORTEST_MISSPELT = 3;
  private static final int SHORTEST_TWO_EDITS = 5;
  private static final int LONGEST_MISSPELT = 24;
  private static final int MOST_INSPECTED = 400;
  private static final int SHORTEST_MISSPELT_BEGINNING = 4;

  private final IndexReader reader;

  /**
   * A word of the index that resembles another.
   *
   * @param word the word
   * @param edits letters to insert, delete, change or swap with a neighbour
   * @param pages that have it
   */
  record Similar(String word, int edits, int pages) {}

  Vocabulary(IndexReader reader) {
    this.reader = reader;
  }

  /** Number of pages in the index, those included that were removed and are still counted below. */
  int pages() {
    return reader.maxDoc();
  }

  /** In how many pages a word occurs. */
  int pagesWith(String word) throws IOException {
    return reader.docFreq(new Term(Analysis.WORDS, word));
  }

  /** In how many pages, at most, a stem or mark occurs in one field. */
  int pagesWithStem(String stem) throws IOException {
    int most = 0;
    for (IndexField field : IndexField.values()) {
      most = Math.max(most, reader.docFreq(new Term(field.key(), stem)));
    }
    return most;
  }

  /**
   * Words that resemble a misspelt one, the likeliest first: with one edit, or for words of five
   * letters and more with two, where none has one.
   *
   * @param word in lower case, not itself in the index
   * @param most how many at most
   */
  List<Similar> similar(String word, int most) throws IOException {
    if (word.length() < SHORTEST_MISSPELT || word.length() > LONGEST_MISSPELT) {
      return List.of();
    }
    int edits = word.length() < SHORTEST_TWO_EDITS ? 1 : 2;
    List<Similar> similar = similar(word, edits, 1);
    if (similar.isEmpty() && word.length() > SHORTEST_MISSPELT) {
      similar = similar(word, edits, 0);
    }
    int fewest = similar.stream().mapToInt(Similar::edits).min().orElse(0);
    String sound = SoundKey.of(word);
    return similar.stream()
        .filter(found -> found.edits() == fewest || SoundKey.of(found.word()).equals(sound))
        .sorted(
            Comparator.comparing((Similar found) -> !SoundKey.of(found.word()).equals(sound))
                .thenComparing(Similar::edits)
                .thenComparing(Comparator.comparing(Similar::pages).reversed())
                .thenComparing(Similar::word))
        .limit(most)
        .toList();
  }

  /** Words that are one edit away from this one and begin with the same letter. */
  List<Similar> oneEditAway(String word) throws IOException {
    return word.length() > LONGEST_MISSPELT ? List.of() : similar(word, 1, 1);
  }

  private List<Similar> similar(String word, int edits, int prefix) throws IOException {
    DirectSpellChecker checker = new DirectSpellChecker();
    checker.setMaxEdits(edits);
    checker.setMinPrefix(prefix);
    checker.setMinQueryLength(SHORTEST_MISSPELT);
    checker.setAccuracy(0);
    checker.setThresholdFrequency(0);
    checker.setMaxQueryFrequency(0);
    List<Similar> similar = new ArrayList<>();
    Term term = new Term(Analysis.WORDS, word);
    int shortest = SHORTEST_MISSPELT;
    for (SuggestWord found : checker.suggestSimilar(term, 12, reader, SuggestMode.SUGGEST_ALWAYS)) {
      boolean isWord = found.string.chars().allMatch(Character::isLetter);
      if (isWord && found.string.length() >= shortest) {
        similar.add(new Similar(found.string, Nearest.distance(word, found.string), found.freq));
      }
    }
    return similar;
  }

  /**
   * Words that begin like this, the most frequent first; where none does, those that begin nearly
   * like it.
   *
   * @param beginning in lower case, not empty
   * @param most how many at most
   */
  List<String> startingWith(String beginning, int most) throws IOException {
    Terms terms = MultiTerms.getTerms(reader, Analysis.WORDS);
    if (terms == null || beginning.length() > LONGEST_MISSPELT) {
      return List.of();
    }
    List<Similar> found = new ArrayList<>();
    TermsEnum all = terms.iterator();
    BytesRef wanted = new BytesRef(beginning);
    if (all.seekCeil(wanted) != TermsEnum.SeekStatus.END) {
      do {
        if (!StringHelper.startsWith(all.term(), wanted)) {
          break;
        }
        found.add(new Similar(all.term().utf8ToString(), 0, all.docFreq()));
      } while (found.size() < MOST_INSPECTED && all.next() != null);
    }
    if (found.isEmpty() && beginning.length() >= SHORTEST_MISSPELT_BEGINNING) {
      found.addAll(startingNearlyWith(beginning, terms));
    }
    return found.stream()
        .sorted(Comparator.comparing(Similar::pages).reversed().thenComparing(Similar::word))
        .map(Similar::word)
        .limit(most)
        .toList();
  }

  private static List<Similar> startingNearlyWith(String beginning, Terms terms)
      throws IOException {
    Automaton near =
        new LevenshteinAutomata(beginning.substring(1), true)
            .toAutomaton(1, beginning.substring(0, 1));
    Automaton begins = Operations.concatenate(near, Automata.makeAnyString());
    CompiledAutomaton compiled =
        new CompiledAutomaton(
            Operations.determinize(begins, Operations.DEFAULT_DETERMINIZE_WORK_LIMIT), false, true);
    TermsEnum matching = compiled.getTermsEnum(terms);
    List<Similar> found = new ArrayList<>();
    while (found.size() < MOST_INSPECTED && matching.next() != null) {
      found.add(new Similar(matching.term().utf8ToString(), 1, matching.docFreq()));
    }
    return found;
  }
}
