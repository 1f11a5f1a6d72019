package limberboard.rigging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rule, against sums done by hand. */
class RunningRiggingTest {
  private static final String RIG = "{I: 11.45 m, J: 3.45 m, P: 10.70 m, E: 4.05 m}";
  private static final String MAIN =
      "  - {id: main, title: Main halyard, group: halyard, length: {P: 2, to-clutch: 1},"
          + " add: {tail: 3 m}, construction: hmpe-core, load: {by: mainsail, beaufort: 6},"
          + " least: {the clutch: 8 mm}, most: {clutch: 10 mm}, ends: [eye-splice, whipping]}\n";

  @TempDir Path folder;

  private Rope one(String rig, String rope) {
    List<Rope> ropes = Rigs.of(folder, rig, rope).ropes();
    assertThat(ropes).hasSize(1);
    return ropes.get(0);
  }

  /**
   * Length: 2 × 10.70 + 2.40 + 3 = 26.80 m. Wind: 0.836 × 6^1.5 = 12.286 m/s = 23.88 kn. Load:
   * 0.02104 × 10.70 × 4.05 ÷ 2 × 23.88² = 260.0 kgf = 2550 N. Needed: × 3 ÷ (0.9 × 0.75) = 11.33
   * kN. 6 mm breaks at 0.4 × 36 = 14.4 kN and would do; the clutch wants 8 mm, 25.6 kN.
   */
  @Test
  void aHalyardAsByHand() {
    Rope rope = one(RIG, MAIN);
    RopeLength.Cut length = (RopeLength.Cut) rope.length();
    assertThat(length.metres()).isCloseTo(26.8, within(1e-9));
    assertThat(length.cut()).isEqualTo(27);
    assertThat(length.working())
        .isEqualTo("2 × 10.7 m (P) + 2.4 m (to clutch) + 3 m (tail) = 26.8 m, cut 27 m");
    assertThat(((Pull.Reckoned) rope.pull()).newtons()).isCloseTo(2550, within(5.0));
    Thickness.Chosen chosen = (Thickness.Chosen) rope.thickness();
    assertThat(chosen.millimetres()).isEqualTo(8);
    assertThat(chosen.needed()).isCloseTo(11_330, within(25.0));
    assertThat(chosen.breaking()).isEqualTo(25_600);
    assertThat(chosen.working())
        .isEqualTo(
            "mainsail, Beaufort 6 = 2.55 kN; × 4.44 (eye splice) = 11.3 kN: 6 mm; for the clutch"
                + " 8 mm, breaks at 25.6 kN");
    assertThat(rope.material())
        .hasValueSatisfying(page -> assertThat(page.id()).isEqualTo("halyard"));
    assertThat(rope.open()).isEmpty();
  }

  /**
   * Load: 4.05² × 10.70² ÷ (11.441 × 4.05) = 40.53 m² at 117.7 N/m² = 4.77 kN, ÷ 4 = 1.19 kN, × 8 =
   * 9.54 kN: 8 mm of 0.2·d² breaks at 12.8 kN.
   */
  @Test
  void aMainsheetAsByHand() {
    Rope rope =
        one(
            RIG,
            "  - {id: sheet, title: Mainsheet, group: sheet, length: {E: 5.6}, cut-to: 1 m, count: 2,"
                + " construction: polyester-braid, load: {by: mainsheet, parts: 4, beaufort: 6},"
                + " ends: [knot]}\n");
    assertThat(rope.length().working()).isEqualTo("5.6 × 4.05 m (E) = 22.68 m, cut 23 m");
    assertThat(((Pull.Reckoned) rope.pull()).newtons()).isCloseTo(1193, within(5.0));
    assertThat(((Thickness.Chosen) rope.thickness()).millimetres()).isEqualTo(8);
    assertThat(rope.count()).isEqualTo(2);
  }

  /** 400 N × 8 = 3.2 kN, exactly what 4 mm of 0.2·d² breaks at. */
  @Test
  void aStatedForceAndAStatedDiameter() {
    Rope force =
        one(
            RIG,
            "  - {id: a, title: A, group: lifting, add: {way: 4.5 m}, construction:"
                + " polyester-braid, load: {force: 0.4 kN}, ends: [knot]}\n");
    assertThat(((Thickness.Chosen) force.thickness()).millimetres()).isEqualTo(4);
    assertThat(force.length().working()).isEqualTo("4.5 m (way)");
    Rope stated =
        one(
            RIG,
            "  - {id: a, title: A, group: tie, add: {turns: 1 m}, cut-to: 0.1 m, construction:"
                + " hmpe-plain, diameter: 1.5 mm}\n");
    assertThat(stated.pull()).isInstanceOf(Pull.NotReckoned.class);
    assertThat(((Thickness.Chosen) stated.thickness()).breaking()).isCloseTo(1800, within(0.1));
    assertThat(((RopeLength.Cut) stated.length()).cut()).isCloseTo(1.0, within(1e-9));
    assertThat(stated.dependsOnTheRig()).isFalse();
  }

  @Test
  void aMissingDimensionLeavesThatOneOpenAndTheRestReckoned() {
    String jib =
        "  - {id: jib, title: Jib halyard, group: halyard, length: {I: 2}, construction:"
            + " hmpe-core, load: {by: headsail, beaufort: 6}, ends: [knot]}\n"
            + "  - {id: tack, title: Tack line, group: control, length: {J: 1, P: 1}, construction:"
            + " hmpe-core, diameter: 8 mm}\n";
    RunningRigging rigging = Rigs.of(folder, "{I: 9 m, P: 8 m, E: 3 m}", MAIN + jib);
    Rope halyard = rigging.ropes().get(1);
    assertThat(halyard.length()).isInstanceOf(RopeLength.Cut.class);
    assertThat(halyard.missing()).containsExactly("J");
    assertThat(halyard.open()).containsExactly("the page of the Sloop gives no J: measure it");
    Rope tack = rigging.ropes().get(2);
    assertThat(tack.length().working()).isEqualTo("? (J) + 8 m (P)");
    assertThat(tack.thickness()).isInstanceOf(Thickness.Chosen.class);
    assertThat(rigging.ropes().get(0).isReckoned()).isTrue();
    assertThat(rigging.totals()).extracting(RopeTotal::metres).containsExactly(21.5);
  }

  @Test
  void whatCannotBeIsSaidAndNothingThrows() {
    String ropes =
        "  - {id: a, title: A, group: sheet, length: {oil: 1}, construction: hmpe-core, diameter: 8"
            + " mm}\n"
            + "  - {id: b, title: B, group: sheet, length: {P: -2}, construction: hmpe-core,"
            + " diameter: 8 kg}\n"
            + "  - {id: c, title: C, group: sheet, construction: hmpe-core, load: {force: 900 kN}}\n"
            + "  - {id: d, title: D, group: sheet, add: {x: 2 kg}, construction: hmpe-core, load:"
            + " {by: mainsheet, beaufort: 6, from-boom-end: 5 m}}\n"
            + "  - {id: e, title: E, group: sheet, add: {x: 2 m}, construction: polyester-braid,"
            + " load: {force: 4 kN}, most: {clutch: 10 mm}, ends: [knot]}\n"
            + "  - {id: f, title: F, group: sheet, add: {x: 2 m}, construction: hmpe-core, load:"
            + " {force: 4 kg, parts: 0}}\n";
    RunningRigging rigging = Rigs.of(folder, RIG, ropes);
    assertThat(rigging.ropes())
        .extracting(Rope::open)
        .isEqualTo(
            List.of(
                List.of("on the page of the Sloop, oil is no length"),
                List.of(
                    "the page counts P no times",
                    "the page states neither a load nor a diameter for it"),
                List.of(
                    "the page states no length for it",
                    "no stocked HMPE core, polyester cover is thick enough: 900 kN; × 4 (whipping) ="
                        + " 3600 kN"),
                List.of(
                    "what is added for x is no length",
                    "the mainsheet cannot pull further from the boom's end than the mast"),
                List.of(
                    "it has to be 14 mm or thicker, and clutch takes no more than 10 mm: choose a"
                        + " stronger construction"),
                List.of("the page states a share or a number of parts that cannot be")));
    assertThat(rigging.totals()).isEmpty();
  }

  @Test
  void onlyWhatTheBoatHasAndInTheOrderOfTheGroups() {
    String ropes =
        "  - {id: warp, title: Warp, group: mooring, add: {x: 9 m}, construction: polyamide-laid,"
            + " diameter: 10 mm}\n"
            + "  - {id: line, title: Furling line, group: reefing, fits: {fitted: furler}, add: {x: 9"
            + " m}, construction: polyester-braid, diameter: 8 mm}\n"
            + "  - {id: tie, title: Tie, group: tie, fits: {fitted: hanks}, add: {x: 1 m},"
            + " construction: hmpe-plain, diameter: 6 mm}\n"
            + MAIN;
    assertThat(Rigs.of(folder, RIG, ropes).ropes())
        .extracting(Rope::id)
        .containsExactly("main", "tie", "warp");
  }

  @Test
  void totalsAddWhatIsAlike() {
    String ropes =
        "  - {id: a, title: A, group: sheet, add: {x: 4.2 m}, count: 3, construction: hmpe-core,"
            + " diameter: 8 mm}\n"
            + MAIN
            + "  - {id: b, title: B, group: sheet, add: {x: 4 m}, construction: polyester-braid,"
            + " diameter: 8 mm}\n";
    assertThat(Rigs.of(folder, RIG, ropes).totals())
        .extracting(RopeTotal::millimetres, RopeTotal::metres)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(8.0, 4.0),
            org.assertj.core.groups.Tuple.tuple(8.0, 27 + 3 * 4.5));
  }
}
