package limberboard.desktop.find;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.boat.Boat;
import limberboard.boat.BoatFinder;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Delay;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.search.MissedSearch;
import limberboard.search.MissedSearch.How;
import limberboard.search.SearchQuery;
import limberboard.search.SearchResults;

/** What has been typed into the search field, and what was found. For the event thread only. */
public final class SearchModel extends Observed {
  private static final int LIMIT = 12;
  private final Session session;
  private final Latest latest;
  private final Delay delay;
  private Optional<SearchSource> source = Optional.empty();
  private String text = "";
  private String foundFor = "";
  private List<Found> found = List.of();
  private Optional<String> didYouMean = Optional.empty();
  private Optional<Consumer<Found>> whenFound = Optional.empty();
  private Consumer<MissedSearch> missed = search -> {};
  private boolean useful = true;

  /**
   * A model with nothing to search yet.
   *
   * @param session tells the boat
   * @param background runs the searches
   * @param delay waits for a pause in typing
   */
  public SearchModel(Session session, Background background, Delay delay) {
    this.session = session;
    this.latest = new Latest(background);
    this.delay = delay;
    session.onChange(this::again);
  }

  /** Says what can be searched from now on. */
  public void ready(SearchSource newSource) {
    source = Optional.of(newSource);
    again();
  }

  /** Whether there is anything to search yet. */
  public boolean isReady() {
    return source.isPresent();
  }

  /** Takes what has been typed so far; searches after a pause. */
  public void type(String typed) {
    if (typed.isBlank() && text.length() > 1) {
      leave();
    }
    useful = false;
    text = typed;
    whenFound = Optional.empty();
    if (typed.isBlank()) {
      latest.drop();
      take("", Outcome.NOTHING, Optional.empty());
    } else {
      delay.restart(this::search);
    }
    tell();
  }

  /** Opens the first thing found: now, or when the search for what has been typed is done. */
  public void openFirst(Consumer<Found> open) {
    if (text.isBlank()) {
      return;
    }
    if (isUpToDate()) {
      found.stream().findFirst().ifPresent(open);
    } else {
      whenFound = Optional.of(open);
      search();
    }
  }

  /** Says who is told of searches that were of no use. */
  public void onMissed(Consumer<MissedSearch> listener) {
    missed = listener;
  }

  /** Something that was found has been opened. */
  public void opened() {
    useful = true;
  }

  /** What has been typed is left; where nothing was opened for it the search was of no use. */
  public void leave() {
    if (!useful && !text.isBlank() && isUpToDate()) {
      useful = true;
      How how = found.isEmpty() ? How.NOTHING : How.NOT_OPENED;
      MissedSearch.of(session.today(), how, text).ifPresent(missed);
    }
  }

  /** What has been typed. */
  public String text() {
    return text;
  }

  /** Whether the hits are for what has been typed. */
  public boolean isUpToDate() {
    return foundFor.equals(text);
  }

  /** The hits, best first. */
  public List<Found> found() {
    return found;
  }

  /** The text with its misspelt words put right, if there were any. */
  public Optional<String> didYouMean() {
    return didYouMean;
  }

  private void again() {
    if (!text.isBlank()) {
      search();
    }
  }

  private void search() {
    String sought = text;
    if (sought.isBlank() || source.isEmpty()) {
      return;
    }
    SearchSource in = source.get();
    Optional<Fitting> fitting = session.fitting();
    SearchQuery query = SearchQuery.of(sought).forBoat(fitting).atMost(LIMIT).whileTyping();
    BoatFinder finder = new BoatFinder(session.workspace(), session.today().getYear() + 1);
    latest.run(
        "Searching",
        () ->
            new Outcome(
                in.find(query),
                new FoundCards.Boats(finder.in(sought), finder.saysNothingElse(sought))),
        outcome -> {
          take(sought, outcome, fitting.map(Fitting::boat));
          tell();
          openWaiting();
        });
  }

  private record Outcome(SearchResults results, FoundCards.Boats boats) {
    static final Outcome NOTHING =
        new Outcome(SearchResults.none(), new FoundCards.Boats(List.of(), false));
  }

  private void take(String sought, Outcome outcome, Optional<Boat> chosen) {
    foundFor = sought;
    found = FoundCards.of(outcome.results(), outcome.boats(), chosen);
    didYouMean = outcome.results().didYouMean();
  }

  private void openWaiting() {
    Optional<Consumer<Found>> open = whenFound;
    whenFound = Optional.empty();
    open.ifPresent(action -> found.stream().findFirst().ifPresent(action));
  }
}
