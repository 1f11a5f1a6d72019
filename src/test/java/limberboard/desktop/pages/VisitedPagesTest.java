package limberboard.desktop.pages;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VisitedPagesTest {
  private final VisitedPages history = new VisitedPages();

  private String now() {
    return history.now().map(VisitedPages.Visit::id).orElse("");
  }

  @Test
  void goesBackAndForwardThroughWhatWasRead() {
    history.visit("a", 0);
    history.visit("b", 0);
    history.visit("c", 0);
    history.back(0);
    history.back(0);
    assertThat(now()).isEqualTo("a");
    assertThat(history.canGoBack()).isFalse();
    history.back(0);
    assertThat(now()).isEqualTo("a");
    history.forward(0);
    assertThat(now()).isEqualTo("b");
    assertThat(history.canGoForward()).isTrue();
  }

  @Test
  void aNewPageForgetsWhatLayAhead() {
    history.visit("a", 0);
    history.visit("b", 0);
    history.back(0);
    history.visit("c", 0);
    assertThat(history.canGoForward()).isFalse();
    history.back(0);
    assertThat(now()).isEqualTo("a");
  }

  @Test
  void remembersHowFarEachPageWasScrolled() {
    history.visit("a", 0);
    history.visit("b", 340);
    history.back(90);
    assertThat(history.now()).contains(new VisitedPages.Visit("pages", "a", 340));
    history.forward(340);
    assertThat(history.now()).contains(new VisitedPages.Visit("pages", "b", 90));
  }

  @Test
  void openingThePageThatIsReadIsNoStep() {
    history.visit("a", 0);
    history.visit("a", 10);
    assertThat(history.canGoBack()).isFalse();
  }

  @Test
  void holdsOnToTheLatestPagesOnly() {
    for (int i = 0; i < 1000; i++) {
      history.visit("page-" + i, 0);
    }
    assertThat(now()).isEqualTo("page-999");
    int steps = 0;
    while (history.canGoBack()) {
      history.back(0);
      steps++;
    }
    assertThat(steps).isEqualTo(199);
  }

  @Test
  void otherPlacesOfTheWindowAreOnTheWay() {
    history.visit("a", 0);
    history.visit("upkeep", "", 120);
    history.visit("b", 5);
    history.back(30);
    assertThat(history.now().map(VisitedPages.Visit::place)).contains("upkeep");
    assertThat(history.page()).contains(new VisitedPages.Visit("pages", "a", 120));
    history.back(77);
    assertThat(history.now()).contains(new VisitedPages.Visit("pages", "a", 120));
    history.forward(80);
    history.forward(0);
    assertThat(history.now()).contains(new VisitedPages.Visit("pages", "b", 30));
  }
}
