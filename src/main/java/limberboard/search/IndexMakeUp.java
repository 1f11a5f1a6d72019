package limberboard.search;

import java.util.Map;
import org.apache.lucene.util.Version;

/**
 * What an index was made by. One with another stamp is built anew.
 *
 * @param entries format, Lucene version and digest of the words files, as they are kept with every
 *     commit
 */
record IndexMakeUp(Map<String, String> entries) {
  /** Goes up whenever documents or analysis change. */
  private static final String FORMAT = "1";

  /** Copies the entries. */
  IndexMakeUp {
    entries = Map.copyOf(entries);
  }

  /** The stamp of this program with these words. */
  static IndexMakeUp of(SearchWords words, StopWords stopWords) {
    return new IndexMakeUp(
        Map.of(
            "format", FORMAT,
            "lucene", Version.LATEST.toString(),
            "words", words.digest(),
            "stop-words", stopWords.digest()));
  }
}
