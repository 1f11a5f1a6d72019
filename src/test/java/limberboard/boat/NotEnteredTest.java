package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import limberboard.library.value.Range;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NotEnteredTest {
  private final Workspace workspace = SmallWorkspace.read();
  private final Page<Model> dinghy = workspace.library().model("dinghy").orElseThrow();

  private Boat boat(int year, Map<String, String> fitted) {
    return NotEntered.boat(dinghy, year, fitted, Water.SALT, Use.PRIVATE);
  }

  @Test
  void sheHasWhatTheYardUsuallyFittedThatYear() {
    Boat boat = boat(2015, Map.of());
    assertThat(boat.equipment())
        .containsExactly(
            Map.entry("vent", "vent-none"),
            Map.entry("stove", "stove-gas"),
            Map.entry("helm", "tiller"));
    assertThat(boat.name()).isEqualTo("Dinghy 18 of 2015");
    assertThat(boat.particulars()).isEqualTo("Dinghy 18, built 2015, not entered");
    assertThat(boat.isEntered()).isFalse();
    assertThat(boat.log()).isEmpty();
    assertThat(workspace.boats()).allMatch(Boat::isEntered);
  }

  @Test
  void whoeverKeepsHerIdKeepsTheBoat() {
    Boat plain = boat(2015, Map.of("stove", "stove-gas"));
    Boat other =
        NotEntered.boat(
            dinghy,
            2011,
            Map.of("vent", "vent-fitted", "stove", "stove-gas"),
            Water.FRESH,
            Use.SAILING_SCHOOL);
    assertThat(plain.id()).isEqualTo("a dinghy of 2015");
    assertThat(other.id())
        .isEqualTo(
            "a dinghy of 2011 with vent-fitted and stove-gas in fresh water for sailing-school");
    assertThat(other.name())
        .isEqualTo(
            "Dinghy 18 of 2011 with vent in the lid and gas stove in fresh water for sailing"
                + " school");
    for (Boat boat : List.of(plain, other)) {
      assertThat(workspace.boat(boat.id())).contains(boat);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "knots",
        "a dinghy",
        "a dinghy of 15",
        "a raft of 2015",
        "a dinghy of 2015 with wings",
        "a dinghy of 2015 in deep water",
        "a dinghy of 2015 for fishing"
      })
  void otherWordsAreNoBoat(String id) {
    assertThat(workspace.boat(id)).isEmpty();
  }

  @Test
  void aBoatOfTheWorkspaceComesFirst() {
    assertThat(workspace.boat("knot").map(Boat::name)).contains("Knot");
  }

  @Test
  void aHullNumberThatNobodyKnowsLeavesNothingOut() {
    Fitting fitting = new Fitting(boat(2015, Map.of()), LocalDate.of(2026, 5, 20));
    for (String hulls : List.of("1/50", "51/99")) {
      Condition condition =
          new Condition(
              List.of(),
              Optional.empty(),
              Optional.of(Range.parse(hulls)),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              Optional.empty(),
              List.of());
      assertThat(fitting.fits(condition)).isTrue();
      assertThat(fitting.judge(condition)).isEqualTo(new Fit.Yes("the hull number is not known"));
    }
  }
}
