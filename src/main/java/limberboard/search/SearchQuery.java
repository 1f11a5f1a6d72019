package limberboard.search;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.Fitting;
import limberboard.library.page.Kind;

/**
 * What somebody looks for.
 *
 * @param text any text: a word, a title, a whole letter; nothing in it is syntax
 * @param boat the boat in question, if there is one
 * @param onlyFitting whether to leave out what does not fit that boat
 * @param kinds the kinds of page wanted; empty: all
 * @param limit at most this many hits, 1 or more
 * @param typing whether the last word may still be being typed, and so be the beginning of one
 */
public record SearchQuery(
    String text,
    Optional<Fitting> boat,
    boolean onlyFitting,
    Set<Kind> kinds,
    int limit,
    boolean typing) {

  /** How many hits {@link #of} asks for. */
  public static final int USUAL_LIMIT = 20;

  /**
   * Copies the kinds.
   *
   * @throws IllegalArgumentException when the limit is less than 1
   */
  public SearchQuery {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(boat, "boat");
    kinds = Set.copyOf(kinds);
    if (limit < 1) {
      throw new IllegalArgumentException("a search is for at least one hit, not " + limit);
    }
  }

  /** This text, over pages of all kinds, for no boat in particular. */
  public static SearchQuery of(String text) {
    return new SearchQuery(text, Optional.empty(), false, Set.of(), USUAL_LIMIT, false);
  }

  /** The same for a boat, if there is one; what does not fit it comes lower. */
  public SearchQuery forBoat(Optional<Fitting> fitting) {
    return new SearchQuery(text, fitting, onlyFitting, kinds, limit, typing);
  }

  /** The same without what does not fit the boat. */
  public SearchQuery fittingOnly() {
    return new SearchQuery(text, boat, true, kinds, limit, typing);
  }

  /** The same among pages of these kinds. */
  public SearchQuery among(Set<Kind> wanted) {
    return new SearchQuery(text, boat, onlyFitting, wanted, limit, typing);
  }

  /** The same with at most this many hits. */
  public SearchQuery atMost(int hits) {
    return new SearchQuery(text, boat, onlyFitting, kinds, hits, typing);
  }

  /** The same, while the last word is still being typed. */
  public SearchQuery whileTyping() {
    return new SearchQuery(text, boat, onlyFitting, kinds, limit, true);
  }
}
