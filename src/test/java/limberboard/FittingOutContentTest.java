package limberboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What there is to print on the demo boats' fitting-out and laying-up lists. How many lines a list
 * should have is this workspace's own promise; where in the year work belongs is common practice,
 * no source.
 */
@ContentTest
class FittingOutContentTest {
  private static final LocalDate A_SPRING_DAY = LocalDate.of(2027, 3, 1);
  private static final Set<Phase> FITTING_OUT =
      EnumSet.of(Phase.ASHORE_MAST_DOWN, Phase.ASHORE_MAST_UP, Phase.AFLOAT, Phase.UNDER_SAIL);

  private static Workspace workspace;
  private static Library library;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    library = workspace.library();
  }

  @ParameterizedTest
  @CsvSource({
    "whimbrel, 50, 35, 10",
    "redshank, 50, 35, 10",
    "dunlin, 50, 35, 10",
    "greenshank, 50, 35, 10",
    "sanderling, 50, 35, 10",
    "turnstone, 28, 22, 8",
  })
  void everyBoatHasItsLists(String id, int fittingOut, int ofThemYearly, int layingUp) {
    Fitting fitting = fitting(id);
    List<Page<Procedure>> out = of(fitting, FITTING_OUT);
    assertThat(out).as("fitting out").hasSizeGreaterThanOrEqualTo(fittingOut);
    assertThat(out)
        .filteredOn(page -> isYearly(interval(page), fitting))
        .as("every year")
        .hasSizeGreaterThanOrEqualTo(ofThemYearly);
    assertThat(of(fitting, EnumSet.of(Phase.LAY_UP)))
        .as("laying up")
        .hasSizeGreaterThanOrEqualTo(layingUp);
  }

  /** A line of the list says where, how long, and what good and bad look like. */
  @Test
  void everyLineCanBePrinted() {
    assertThat(library.all(Procedure.class))
        .filteredOn(page -> page.details().interval().isPresent())
        .hasSizeGreaterThanOrEqualTo(60)
        .allSatisfy(
            page -> {
              assertThat(page.details().lookFor()).as(page.id()).isPresent();
              assertThat(page.head().summary()).as(page.id()).isNotBlank();
              assertThat(page.details().minutes()).as(page.id()).isPositive();
            });
  }

  @Test
  void nothingMustPrecedeWhatIsDoneEarlierInTheYear() {
    List<String> backwards = new ArrayList<>();
    for (Page<Procedure> page : library.all(Procedure.class)) {
      for (String later : page.details().before()) {
        Phase first = phase(page);
        Phase second = phase(library.procedure(later).orElseThrow());
        if (first != null && second != null && first.compareTo(second) > 0) {
          backwards.add(page.id() + " before " + later);
        }
      }
    }
    assertThat(backwards).isEmpty();
  }

  @Test
  void noPrecedenceRunsInACircle() {
    Set<String> done = new HashSet<>();
    for (Page<Procedure> page : library.all(Procedure.class)) {
      assertThat(circle(page.id(), new ArrayList<>(), done)).isEmpty();
    }
    assertThat(done).hasSize(library.all(Procedure.class).size());
  }

  private static List<String> circle(String id, List<String> way, Set<String> done) {
    if (way.contains(id)) {
      return List.copyOf(way);
    }
    List<String> further = new ArrayList<>(way);
    further.add(id);
    for (String later : library.procedure(id).orElseThrow().details().before()) {
      List<String> found = done.contains(later) ? List.of() : circle(later, further, done);
      if (!found.isEmpty()) {
        return found;
      }
    }
    done.add(id);
    return List.of();
  }

  /** Common practice, no source. */
  @Test
  void workStandsWhereInTheYearItCanBeDone() {
    Map<String, Phase> places =
        Map.ofEntries(
            Map.entry("inspect-keel-hydraulics", Phase.AFLOAT),
            Map.entry("top-up-keel-hydraulics", Phase.AFLOAT),
            Map.entry("inspect-mast-foot", Phase.ASHORE_MAST_DOWN),
            Map.entry("check-fasteners-for-vibration", Phase.ASHORE_MAST_DOWN),
            Map.entry("service-mast-sheaves", Phase.ASHORE_MAST_DOWN),
            Map.entry("lubricate-turnbuckles", Phase.ASHORE_MAST_DOWN),
            Map.entry("antifoul-hull", Phase.ASHORE_MAST_UP),
            Map.entry("check-shaft-coupling", Phase.AFLOAT),
            Map.entry("tune-rig-under-sail", Phase.UNDER_SAIL),
            Map.entry("tape-split-pins", Phase.UNDER_SAIL),
            Map.entry("change-saildrive-oil", Phase.LAY_UP),
            Map.entry("winterise-engine", Phase.LAY_UP));
    places.forEach(
        (id, phase) ->
            assertThat(phase(library.procedure(id).orElseThrow())).as(id).isEqualTo(phase));
  }

  /** Nobody can lie on the hard and sail: what needs the boat ashore is not planned afloat. */
  @Test
  void whatNeedsTheBoatAshoreIsPlannedAshore() {
    Set<Phase> onTheWater = EnumSet.of(Phase.AFLOAT, Phase.UNDER_SAIL);
    assertThat(library.all(Procedure.class))
        .filteredOn(page -> phase(page) != null && onTheWater.contains(phase(page)))
        .isNotEmpty()
        .allSatisfy(
            page ->
                assertThat(page.details().access())
                    .as(page.id())
                    .doesNotContain("hauled-out", "mast-down", "keel-raised-in-slings"));
  }

  @Test
  void whatNeedsTheMastDownIsNotPlannedWithTheMastUp() {
    assertThat(library.all(Procedure.class))
        .filteredOn(page -> phase(page) == Phase.ASHORE_MAST_UP)
        .isNotEmpty()
        .allSatisfy(
            page -> assertThat(page.details().access()).as(page.id()).doesNotContain("mast-down"));
  }

  private static Fitting fitting(String id) {
    Boat boat =
        workspace.boats().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return new Fitting(boat, A_SPRING_DAY);
  }

  private static List<Page<Procedure>> of(Fitting fitting, Set<Phase> phases) {
    return library.all(Procedure.class).stream()
        .filter(page -> fitting.fits(page.head().fits()))
        .filter(page -> phase(page) != null && phases.contains(phase(page)))
        .toList();
  }

  private static Phase phase(Page<Procedure> page) {
    return page.details().interval().flatMap(Interval::phase).orElse(null);
  }

  private static Interval interval(Page<Procedure> page) {
    return page.details().interval().orElseThrow();
  }

  private static boolean isYearly(Interval interval, Fitting fitting) {
    double factor =
        interval.factors().stream()
            .filter(one -> fitting.fits(one.when()))
            .mapToDouble(Interval.Factor::times)
            .reduce(1, (one, other) -> one * other);
    boolean byDate = interval.every().map(FittingOutContentTest::months).orElse(1e9) * factor <= 12;
    boolean bySeason = interval.seasons().orElse(1_000_000) * factor <= 1;
    return byDate || bySeason;
  }

  private static double months(Period period) {
    return period.toTotalMonths() + period.getDays() / 30.0;
  }
}
