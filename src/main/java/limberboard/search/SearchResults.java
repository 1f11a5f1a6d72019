package limberboard.search;

import java.util.List;
import java.util.Optional;

/**
 * What was found.
 *
 * @param hits the best first
 * @param didYouMean the query with its misspelt words put right from the index's own words, when
 *     there were any; the hits are already found as if it had been asked
 */
public record SearchResults(List<Hit> hits, Optional<String> didYouMean) {
  /** Copies the hits. */
  public SearchResults {
    hits = List.copyOf(hits);
  }

  /** Nothing found. */
  public static SearchResults none() {
    return new SearchResults(List.of(), Optional.empty());
  }
}
