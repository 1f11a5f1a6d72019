package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.library.page.Head;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Exposure;
import limberboard.library.value.Range;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FitTest {
  @TempDir Path folder;

  private static Optional<Fitting> boatBuilt(int year) {
    Head head = new Head("Plover 20", null, null, null, null, null, null, null);
    Model model =
        new Model(
            Range.parse("2000/.."),
            null,
            new Model.Drawing("a.svg", "b.svg"),
            List.of(),
            List.of(),
            null,
            null,
            null,
            null,
            null,
            null);
    Boat boat =
        new Boat(
            "knot",
            "Knot",
            new Page<>("plover-20", "articles/models/plover-20.md", head, model, "", 1),
            7,
            year,
            Optional.empty(),
            Use.PRIVATE,
            Water.SALT,
            Exposure.USUAL,
            Map.of(),
            Optional.empty(),
            "",
            List.of());
    return Optional.of(new Fitting(boat, LocalDate.of(2024, 5, 1)));
  }

  @Test
  void whatDoesNotFitTheBoatComesLowerAndSaysWhy() throws IOException {
    SmallSearchWorkspace workspace = SmallSearchWorkspace.filled(folder);
    workspace.topic("gaskets", "Hatch gaskets", "How a hatch gasket is made.");
    try (SearchIndex index = workspace.index()) {
      SearchQuery query = SearchQuery.of("renew the old hatch gasket");
      assertThat(ids(index.find(query))).first().isEqualTo("renew-hatch-gasket");
      assertThat(ids(index.find(query.forBoat(boatBuilt(2012)))))
          .first()
          .isEqualTo("renew-hatch-gasket");
      List<Hit> young = index.find(query.forBoat(boatBuilt(2020))).hits();
      assertThat(young.stream().map(Hit::id)).contains("renew-hatch-gasket");
      assertThat(young.get(0).id()).isNotEqualTo("renew-hatch-gasket");
      Hit lower =
          young.stream().filter(hit -> hit.id().equals("renew-hatch-gasket")).findFirst().get();
      assertThat(lower.fit()).isEqualTo(new Fit.No("built 2020, after 2015"));
    }
  }

  @Test
  void onlyWhatFitsIsFoundWhenAskedFor() throws IOException {
    try (SearchIndex index = SmallSearchWorkspace.filled(folder).index()) {
      SearchQuery query = SearchQuery.of("hatch gasket").fittingOnly();
      assertThat(ids(index.find(query.forBoat(boatBuilt(2020)))))
          .contains("wet-bunk")
          .doesNotContain("renew-hatch-gasket");
      assertThat(ids(index.find(query.forBoat(boatBuilt(2012))))).contains("renew-hatch-gasket");
      assertThat(ids(index.find(query))).as("without a boat").contains("renew-hatch-gasket");
    }
  }

  @Test
  void everyHitThatFitsIsFoundHoweverManyDoNot() throws IOException {
    SmallSearchWorkspace workspace = new SmallSearchWorkspace(folder);
    for (int i = 0; i < 120; i++) {
      workspace.page(
          "topics/winch-" + i, "title: Winch " + i + "\nfits: {built: 2001}", "Winch, winch.");
    }
    workspace.topic(
        "other", "A long title about something else", "Here is one winch " + "x ".repeat(99));
    try (SearchIndex index = workspace.index()) {
      SearchQuery query = SearchQuery.of("winch").forBoat(boatBuilt(2020));
      assertThat(ids(index.find(query.atMost(200)))).hasSize(121).contains("other");
      assertThat(ids(index.find(query.atMost(5).fittingOnly()))).containsExactly("other");
    }
  }

  @Test
  void aBoatThatEverythingFitsGetsReasons() throws IOException {
    try (SearchIndex index = SmallSearchWorkspace.filled(folder).index()) {
      List<Hit> hits = index.find(SearchQuery.of("hatch gasket").forBoat(boatBuilt(2012))).hits();
      assertThat(hits).allMatch(hit -> hit.fit().fits());
      assertThat(hits)
          .filteredOn(hit -> hit.id().equals("renew-hatch-gasket"))
          .extracting(hit -> hit.fit().reason())
          .containsExactly("built 2012");
    }
  }
}
