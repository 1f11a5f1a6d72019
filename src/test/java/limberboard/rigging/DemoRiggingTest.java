package limberboard.rigging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;
import limberboard.library.value.RopeConstruction;
import org.junit.jupiter.api.Test;

/** The ropes of the repository's own boats. */
@ContentTest
class DemoRiggingTest {
  private static final Workspace WORKSPACE = Rigs.workspace(Path.of(""));

  private static RunningRigging rigging(Boat boat) {
    return RunningRigging.of(WORKSPACE.library(), new Fitting(boat, Rigs.A_DAY));
  }

  private static double given(Boat boat, String name) {
    Map<String, Amount.Fixed> rig = boat.model().details().rig();
    Map<String, Amount.Fixed> measures = boat.model().details().measures();
    Amount.Fixed fixed = rig.getOrDefault(name, measures.get(name));
    return KnownUnit.METRES.of(fixed.quantity()).orElseThrow();
  }

  private static Optional<Rope> rope(Boat boat, String id) {
    return rigging(boat).ropes().stream().filter(rope -> rope.id().equals(id)).findFirst();
  }

  private static double cut(Boat boat, String id) {
    return ((RopeLength.Cut) rope(boat, id).orElseThrow().length()).cut();
  }

  @Test
  void everyBoatHasItsRopesAndNothingIsOpen() {
    assertThat(WORKSPACE.boats()).hasSize(6);
    for (Boat boat : WORKSPACE.boats()) {
      List<Rope> ropes = rigging(boat).ropes();
      assertThat(ropes).as(boat.name()).hasSizeGreaterThanOrEqualTo(14).allMatch(Rope::isReckoned);
      assertThat(ropes).extracting(Rope::id).contains("main-halyard", "mainsheet", "kicker");
    }
  }

  @Test
  void gearThatIsNotFittedHasNoRopes() {
    for (Boat boat : WORKSPACE.boats()) {
      assertThat(rope(boat, "furling-line").isPresent()).isEqualTo(boat.has("headsail-furling"));
      assertThat(rope(boat, "soft-forestay-tie").isPresent())
          .isEqualTo(boat.has("headsail-hanked"));
      assertThat(rope(boat, "gennaker-halyard").isPresent())
          .isEqualTo(boat.has("bowsprit-retracting"));
      assertThat(rope(boat, "centreboard-pennant").isPresent()).isEqualTo(boat.has("centreboard"));
      assertThat(rope(boat, "outboard-lock-trip-line").isPresent())
          .isEqualTo(boat.has("drive-outboard"));
    }
  }

  /** What procedures take from the models' measures is what the rule comes to. */
  @Test
  void measuresAndRuleAgree() {
    for (Boat boat : WORKSPACE.boats()) {
      assertThat(cut(boat, "main-halyard")).isEqualTo(given(boat, "halyard-length"));
      if (boat.has("headsail-furling")) {
        assertThat(cut(boat, "furling-line")).isEqualTo(given(boat, "furling-line"));
      }
      if (boat.has("centreboard")) {
        assertThat(cut(boat, "centreboard-pennant"))
            .isCloseTo(given(boat, "pennant-length") * 1.1, within(0.1));
      }
    }
  }

  /**
   * Rules of thumb that rope shops and class papers publish: main halyard with its winch on the
   * mast 2.1·P + 2 m, and more where it is led aft; headsail halyard forestay + I + way aft; sheet
   * of a small jib 1.05 and of a roller genoa 1.4 lengths of the boat.
   */
  @Test
  void lengthsAreNearTheRulesOfThumb() {
    for (Boat boat : WORKSPACE.boats()) {
      double aft = boat.has("clutches-fitted") ? given(boat, "mast-foot-to-clutch") : 0;
      double thumb = 2.1 * given(boat, "P") + 2 + aft;
      assertThat(cut(boat, "main-halyard")).as(boat.name()).isBetween(thumb - 0.5, thumb + 2);
      String headsail = boat.has("wheel") ? "genoa-halyard" : "jib-halyard";
      double up = given(boat, "forestay") + given(boat, "I");
      assertThat(cut(boat, headsail)).as(boat.name()).isBetween(up + 1, up + 5.5);
      String sheets = rope(boat, "jib-sheets").isPresent() ? "jib-sheets" : "genoa-sheets";
      double lengths = cut(boat, sheets) / given(boat, "length-overall");
      assertThat(lengths).as(boat.name()).isBetween(1.05, 1.5);
    }
  }

  /** Common practice, no source. */
  @Test
  void whatTheTradeSaysOfThinCord() {
    for (Boat boat : WORKSPACE.boats()) {
      Map<String, Rope> ropes =
          rigging(boat).ropes().stream().collect(Collectors.toMap(Rope::id, rope -> rope));
      assertThat(size(ropes.get("boom-strop"))).isLessThanOrEqualTo(6);
      assertThat(ropes.get("boom-strop").construction()).isEqualTo(RopeConstruction.HMPE_PLAIN);
      assertThat(size(ropes.get("block-lashings"))).isEqualTo(1.5);
      assertThat(cut(boat, "block-lashings")).isCloseTo(1.1, within(1e-9));
      if (ropes.containsKey("soft-forestay-tie")) {
        assertThat(size(ropes.get("soft-forestay-tie"))).isEqualTo(6);
        assertThat(cut(boat, "soft-forestay-tie")).isCloseTo(1.1, within(1e-9));
      }
    }
  }

  private static double size(Rope rope) {
    return ((Thickness.Chosen) rope.thickness()).millimetres();
  }

  /** Clutches hold ropes of their range and no others. */
  @Test
  void ropesInClutchesAreOfTheirRange() {
    for (Boat boat : WORKSPACE.boats()) {
      if (boat.has("clutches-fitted")) {
        double most = boat.has("wheel") ? 12 : 10;
        assertThat(size(rope(boat, "main-halyard").orElseThrow())).isBetween(8.0, most);
        assertThat(size(rope(boat, "reef-line-1").orElseThrow())).isBetween(8.0, most);
      }
    }
  }
}
