package limberboard.desktop.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fit;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.page.Kind;
import limberboard.search.Excerpt;
import limberboard.search.Hit;
import limberboard.search.MarkedSpan;
import limberboard.search.SearchQuery;
import limberboard.search.SearchResults;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SearchModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Steps searches = new Steps();
  private final List<Runnable> paused = new ArrayList<>();
  private final List<SearchQuery> asked = new ArrayList<>();
  private final List<Found> opened = new ArrayList<>();
  private final SearchModel model =
      new SearchModel(
          session,
          searches.background(),
          action -> {
            paused.clear();
            paused.add(action);
          });

  @BeforeEach
  void read() {
    session.replace(SmallWorkspace.read());
  }

  private void ready() {
    model.ready(
        query -> {
          asked.add(query);
          return new SearchResults(List.of(hit(query.text())), Optional.empty());
        });
  }

  private static Hit hit(String text) {
    return new Hit(
        "wet-locker",
        Kind.SYMPTOM,
        "About " + text,
        1,
        new Excerpt("the wet locker", List.of(new MarkedSpan(4, 7))),
        new Fit.Yes("a Dinghy 18"));
  }

  private void pause() {
    List<Runnable> actions = List.copyOf(paused);
    paused.clear();
    actions.forEach(Runnable::run);
  }

  @Test
  void searchingWaitsForAPauseInTypingAndRunsInTheBackground() {
    ready();
    model.type("w");
    model.type("we");
    model.type("wet");
    assertThat(searches.waiting()).isZero();
    pause();
    assertThat(asked).isEmpty();
    searches.all();
    assertThat(asked).extracting(SearchQuery::text).containsExactly("wet");
    assertThat(asked.get(0).typing()).isTrue();
    assertThat(asked.get(0).boat()).isEqualTo(session.fitting());
    assertThat(model.found())
        .extracting(found -> found.card().title())
        .containsExactly("About wet");
    assertThat(model.isUpToDate()).isTrue();
  }

  @Test
  void theOutcomeOfAnOlderSearchIsDroppedEvenWhenItComesLast() {
    ready();
    model.type("old");
    pause();
    model.type("new");
    pause();
    searches.last();
    searches.last();
    assertThat(model.found())
        .extracting(found -> found.card().title())
        .containsExactly("About new");
  }

  private List<String> missed() {
    List<String> missed = new ArrayList<>();
    model.onMissed(search -> missed.add(search.how().word() + " " + search.words()));
    return missed;
  }

  private void found(String typed) {
    model.type(typed);
    pause();
    searches.all();
  }

  @Test
  void whatIsLeftWithoutAnythingOpenedIsTold() {
    ready();
    List<String> missed = missed();
    found("wet");
    model.leave();
    model.leave();
    assertThat(missed).containsExactly("not-opened wet");
    found("damp");
    model.type("");
    assertThat(missed).as("emptied").containsExactly("not-opened wet", "not-opened damp");
    found("soaked");
    model.opened();
    model.leave();
    model.type("unfinished");
    model.leave();
    assertThat(missed).as("opened, and not searched yet").hasSize(2);
  }

  @Test
  void whatFindsNothingIsToldAsThat() {
    model.ready(query -> SearchResults.none());
    List<String> missed = missed();
    found("fridge");
    model.leave();
    assertThat(missed).containsExactly("nothing fridge");
  }

  @Test
  void emptyingTheFieldTakesTheHitsAwayAndDropsWhatIsUnderWay() {
    ready();
    model.type("wet");
    pause();
    model.type("");
    searches.all();
    assertThat(model.found()).isEmpty();
    assertThat(model.isUpToDate()).isTrue();
  }

  @Test
  void enterBeforeTheOutcomeOpensTheFirstHitOnceItIsThere() {
    ready();
    model.type("wet");
    model.openFirst(opened::add);
    assertThat(opened).isEmpty();
    searches.all();
    assertThat(opened).extracting(found -> found.target().id()).containsExactly("wet-locker");
  }

  @Test
  void typingOnAfterEnterOpensNothing() {
    ready();
    model.type("wet");
    model.openFirst(opened::add);
    model.type("wet l");
    searches.all();
    pause();
    searches.all();
    assertThat(opened).isEmpty();
  }

  @Test
  void enterOnHitsThatAreThereOpensAtOnce() {
    ready();
    model.type("wet");
    pause();
    searches.all();
    model.openFirst(opened::add);
    assertThat(opened).hasSize(1);
  }

  @Test
  void whatWasTypedBeforeTheIndexWasReadyIsSearchedWhenItIs() {
    model.type("wet");
    pause();
    assertThat(searches.waiting()).isZero();
    ready();
    searches.all();
    assertThat(model.found()).hasSize(1);
  }

  @Test
  void anotherBoatIsSearchedForAnew() {
    ready();
    model.type("wet");
    pause();
    searches.all();
    session.choose(Optional.of("stint"));
    searches.all();
    assertThat(asked).hasSize(2);
    assertThat(asked.get(1).boat().orElseThrow().boat().id()).isEqualTo("stint");
  }

  @Test
  void boatsAreFoundByTheBeginningOfTheirName() {
    ready();
    model.type("kno");
    pause();
    searches.all();
    assertThat(model.found().get(0).target()).isEqualTo(new Found.BoatTarget("knot"));
    assertThat(model.found().get(0).card().kind()).isEqualTo("boat");
  }

  @Test
  void hitsSayWhyTheyFitAndWhereTheWordsStand() {
    ready();
    model.type("wet");
    pause();
    searches.all();
    Found found = model.found().get(0);
    assertThat(found.target()).isEqualTo(new Found.SymptomTarget("wet-locker", true));
    assertThat(found.card().note()).isEqualTo("Fits this boat: a Dinghy 18");
    assertThat(found.card().marks()).hasSize(1);
    assertThat(found.card().muted()).isFalse();
  }

  @Test
  void whatDoesNotFitIsShownAsOfSecondRankWithTheReason() {
    model.ready(
        query ->
            new SearchResults(
                List.of(
                    new Hit(
                        "gas-smell",
                        Kind.SYMPTOM,
                        "A smell of gas",
                        1,
                        Excerpt.EMPTY,
                        new Fit.No("has no gas stove"))),
                Optional.of("gas")));
    model.type("gsa");
    pause();
    searches.all();
    Found found = model.found().get(0);
    assertThat(found.card().muted()).isTrue();
    assertThat(found.card().note()).isEqualTo("Not for this boat: has no gas stove");
    assertThat(found.target()).isEqualTo(new Found.SymptomTarget("gas-smell", false));
    assertThat(model.didYouMean()).contains("gas");
  }
}
