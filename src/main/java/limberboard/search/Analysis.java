package limberboard.search;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.PerFieldAnalyzerWrapper;
import org.apache.lucene.analysis.pattern.PatternReplaceCharFilter;
import org.apache.lucene.analysis.snowball.SnowballFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.tartarus.snowball.ext.EnglishStemmer;

/**
 * How text becomes words: Unicode word breaks (UAX 29), lower case, no accents, no possessive
 * endings; then for the searched fields English stems (Porter's Snowball stemmer) with the marks of
 * {@link WordGroups} beside them. No word is left out: what counts for little is decided when a
 * question is read. Safe for use by several threads.
 */
final class Analysis {
  /** The field of whole words, which spellings are corrected from. */
  static final String WORDS = "words";

  private static final Pattern TIGHT = Pattern.compile("(?<=\\p{L})[.:_](?=\\p{L})");

  private static final Pattern HALF_CHARACTER = Pattern.compile("\\p{Cs}");

  private final Analyzer words = new Words();
  private final Analyzer stems;
  private final Analyzer forIndex;
  private final WordGroups groups;

  Analysis(SearchWords searchWords) {
    groups = new WordGroups();
    for (int i = 0; i < searchWords.groups().size(); i++) {
      for (String phrase : searchWords.groups().get(i)) {
        groups.add(i, tokens(phrase).stream().map(token -> stem(token.word())).toList());
      }
    }
    stems = new Stems(groups);
    forIndex = new PerFieldAnalyzerWrapper(stems, Map.of(WORDS, words));
  }

  /** For writing documents. */
  Analyzer forIndex() {
    return forIndex;
  }

  /** For the stemmed fields. */
  Analyzer stems() {
    return stems;
  }

  /** The groups of words. */
  WordGroups groups() {
    return groups;
  }

  /** The words of a text, unstemmed. */
  List<Token> tokens(String text) {
    List<Token> tokens = new ArrayList<>();
    try (TokenStream stream = words.tokenStream(WORDS, wellFormed(text))) {
      CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
      OffsetAttribute offset = stream.addAttribute(OffsetAttribute.class);
      stream.reset();
      while (stream.incrementToken()) {
        tokens.add(new Token(term.toString(), offset.startOffset(), offset.endOffset()));
      }
      stream.end();
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory failed", e);
    }
    return tokens;
  }

  /** A text of which halves of characters, which the tokenizer stumbles over, are left out. */
  static String wellFormed(String text) {
    return text.chars().anyMatch(unit -> Character.isSurrogate((char) unit))
        ? HALF_CHARACTER.matcher(text).replaceAll(" ")
        : text;
  }

  /** The stem of a word. */
  static String stem(String word) {
    EnglishStemmer stemmer = new EnglishStemmer();
    stemmer.setCurrent(word);
    stemmer.stem();
    return stemmer.getCurrent();
  }

  /** Words that are written together round a full stop, a colon or an underscore are apart. */
  private static Reader loosened(Reader text) {
    return new PatternReplaceCharFilter(TIGHT, " ", text);
  }

  private static TokenStream normal(Tokenizer source) {
    return new EnglishPossessiveFilter(new ASCIIFoldingFilter(new LowerCaseFilter(source)));
  }

  private static final class Words extends Analyzer {
    @Override
    protected Reader initReader(String field, Reader text) {
      return loosened(text);
    }

    @Override
    protected TokenStreamComponents createComponents(String field) {
      Tokenizer source = new StandardTokenizer();
      return new TokenStreamComponents(source, normal(source));
    }
  }

  private static final class Stems extends Analyzer {
    private final WordGroups groups;

    Stems(WordGroups groups) {
      this.groups = groups;
    }

    @Override
    protected Reader initReader(String field, Reader text) {
      return loosened(text);
    }

    @Override
    protected TokenStreamComponents createComponents(String field) {
      Tokenizer source = new StandardTokenizer();
      TokenStream stemmed = new SnowballFilter(normal(source), new EnglishStemmer());
      return new TokenStreamComponents(source, new GroupFilter(stemmed, groups));
    }
  }
}
