package limberboard.workings.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Caution;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.FigureValue;
import limberboard.library.value.KnownUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The torques, fuses, pulls and flows that pages give, held against the tables they name. */
@ContentTest
class PageFiguresTest {
  private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
  private static final double POUND_FORCE = 4.448;
  private static final Pattern TORQUE_FOR = Pattern.compile(NUMBER + " N·m for M(\\d+)");
  private static final Pattern THREAD_AT =
      Pattern.compile("M(\\d+)(?: studs| lugs| into [a-z ]+?)?(?:,? (?:about|at))? " + NUMBER);
  private static final Pattern SOFT =
      Pattern.compile("light alloy|aluminium|brass|bronze|plastic|lug|stud|bleed|hollow|gently");

  /** A published table to ISO 3506-1, class 70: 90 % of the 0.2 % stress, friction 0.1 and 0.2. */
  private static final Map<Integer, Band> STAINLESS =
      Map.of(
          5, new Band(3.4, 5.1),
          6, new Band(5.9, 8.8),
          8, new Band(14.5, 21.4),
          10, new Band(30, 44),
          12, new Band(50, 74));

  /** VDI 2230, 2003, class 8.8 at 90 %, friction 0.10 and 0.14: from memory. */
  private static final Map<Integer, Band> STEEL =
      Map.of(
          6, new Band(9.0, 11.1),
          8, new Band(21.6, 27.3),
          10, new Band(43, 54),
          12, new Band(73, 93));

  private static Library library;

  private record Band(double least, double most) {}

  private record Torque(String page, String line, int thread, double figure) {}

  @BeforeAll
  static void read() throws IOException {
    library = new LibraryReader(new WorkspaceFolders(Path.of(""))).read();
  }

  @Test
  void torquesOfStainlessBoltsLieWithinTheTableOfTheirClass() {
    List<Torque> dry =
        torques().stream()
            .filter(each -> STAINLESS.containsKey(each.thread()))
            .filter(each -> !isSteel(each))
            .filter(each -> !SOFT.matcher(each.line()).find())
            .toList();
    assertThat(dry).hasSizeGreaterThan(20);
    assertThat(dry)
        .allSatisfy(
            each -> {
              Band band = STAINLESS.get(each.thread());
              assertThat(each.figure()).as("%s", each).isBetween(band.least(), band.most());
            });
  }

  @Test
  void torquesOfSteelBoltsLieWithinTheTableOfTheirClass() {
    List<Torque> steel = torques().stream().filter(each -> isSteel(each)).toList();
    assertThat(steel).hasSizeGreaterThan(6);
    assertThat(steel)
        .allSatisfy(
            each -> {
              Band band = STEEL.get(each.thread());
              assertThat(each.figure()).as("%s", each).isBetween(band.least(), band.most());
            });
  }

  /** What is softer than a stainless nut takes no more than that. */
  @Test
  void torquesIntoSofterMetalAreNoHigherThanThoseOfStainlessBolts() {
    List<Torque> soft =
        torques().stream()
            .filter(each -> STAINLESS.containsKey(each.thread()))
            .filter(each -> !isSteel(each))
            .filter(each -> SOFT.matcher(each.line()).find())
            .toList();
    assertThat(soft).hasSizeGreaterThan(5);
    assertThat(soft)
        .allSatisfy(
            each ->
                assertThat(each.figure())
                    .as("%s", each)
                    .isLessThanOrEqualTo(STAINLESS.get(each.thread()).most()));
  }

  /** The published table is the more cautious one: never above the sum, at most a seventh below. */
  @ParameterizedTest
  @CsvSource({"M6, 0.1, 5.9", "M6, 0.2, 8.8", "M8, 0.1, 14.5", "M8, 0.2, 21.4", "M10, 0.2, 44"})
  void theTableIsNoHigherThanTheSum(IsoThread thread, double friction, double torque) {
    ThreadSize size = thread.size();
    double computed = size.torque(size.preload(450, 0.9, friction), friction);
    assertThat(torque).isBetween(0.85 * computed, computed);
  }

  /** Seventy degrees' insulation in a bundle of up to six: what an old boat's loom has. */
  @Test
  void noFuseIsLargerThanItsCableCarries() {
    String table = material("blade-fuse").body();
    List<double[]> rows =
        found(Pattern.compile("\\| " + NUMBER + " \\| [a-z ]+ \\| " + NUMBER + " mm² \\|"), table)
            .map(row -> new double[] {number(row, 1), number(row, 2)})
            .toList();
    assertThat(rows).hasSize(7);
    String wiring = procedure("inspect-wiring").body();
    List<double[]> named =
        found(Pattern.compile(NUMBER + " mm² up to " + NUMBER + " A"), wiring)
            .map(pair -> new double[] {number(pair, 2), number(pair, 1)})
            .toList();
    assertThat(named).hasSize(4);
    assertThat(Stream.concat(rows.stream(), named.stream()))
        .allSatisfy(
            pair ->
                assertThat(thinnest(pair[0]))
                    .as("%s A on %s mm²", pair[0], pair[1])
                    .isLessThanOrEqualTo(Math.max(pair[1], 1)));
    assertThat(named).allSatisfy(pair -> assertThat(rows).contains(pair));
  }

  /**
   * UL 486A: 30 lbf for AWG 16 (1.31 mm²), 50 lbf for AWG 14 (2.08 mm²); ABYC E-11, table XVI, asks
   * 15 and 30 lbf.
   */
  @ParameterizedTest
  @CsvSource({"heat-shrink-terminals", "remake-mast-foot-connector"})
  void aCrimpIsPulledAsHardAsTheStandardAsks(String page) {
    String text =
        library
            .procedure(page)
            .map(Page::body)
            .or(() -> library.material(page).map(Page::body))
            .map(PageFiguresTest::plain)
            .orElseThrow();
    List<Double> pulls =
        found(Pattern.compile(NUMBER + " N(?![·a-z])"), text).map(hit -> number(hit, 1)).toList();
    assertThat(pulls).hasSize(2);
    assertThat(pulls.get(0)).isCloseTo(30 * POUND_FORCE, within(5.0));
    assertThat(pulls.get(1)).isCloseTo(50 * POUND_FORCE, within(5.0));
  }

  /** Torricelli's law with a discharge coefficient of 0.6, half a metre down. */
  @Test
  void aHoleLetsInWhatTheLawSays() {
    Page<Caution> page = library.caution("flooding").orElseThrow();
    List<double[]> rows =
        found(Pattern.compile("\\| (\\d+) mm[^|]*\\| (\\d+) \\|"), page.body())
            .map(row -> new double[] {number(row, 1), number(row, 2)})
            .toList();
    assertThat(rows).hasSize(4);
    double speed = Math.sqrt(2 * 9.81 * 0.5);
    assertThat(rows)
        .allSatisfy(
            row -> {
              double area = Math.PI / 4 * Math.pow(row[0] / 1000, 2);
              double litres = 0.6 * area * speed * 1000 * 60;
              assertThat(row[1]).as("%s mm", row[0]).isCloseTo(litres, within(litres * 0.05));
            });
  }

  private static boolean isSteel(Torque torque) {
    return torque.line().contains("8.8") || torque.line().contains("Wheel nuts");
  }

  private static double thinnest(double amperes) {
    return CableTable.carrying(amperes, "to-70", CableTable.inBundle("to-6")).orElseThrow();
  }

  /** A body without the targets of its links. */
  private static String plain(String body) {
    return body.replaceAll("\\[([^\\[\\]]*)\\]\\([^()]*\\)", "$1");
  }

  private static double figure(String page, String name, KnownUnit unit) {
    FigureValue value = material(page).details().figures().get(name).value().orElseThrow();
    assertThat(value.least()).isEqualTo(value.most());
    return unit.of(value.least()).orElseThrow();
  }

  /**
   * The same table to ISO 3506-1, and one of torques by class at friction 0.14, A2-70 and A4-70.
   */
  @ParameterizedTest
  @CsvSource({"5, 4.2", "6, 7.3", "8, 17.5", "10, 35"})
  void theFiguresForStainlessBoltsAgreeWithTwoPublishedTables(int thread, double published) {
    double dry = figure("stainless-screws-a4", "m" + thread + "-dry", KnownUnit.NEWTON_METRES);
    Band band = STAINLESS.get(thread);
    assertThat(dry).isBetween(band.least(), band.most());
    assertThat(dry).isCloseTo(published, within(published * 0.1));
    double greased =
        figure("stainless-screws-a4", "m" + thread + "-greased", KnownUnit.NEWTON_METRES);
    assertThat(greased / dry).isBetween(0.65, 0.8);
  }

  @ParameterizedTest
  @CsvSource({"6", "8", "10"})
  void theFiguresForSteelBoltsAgreeWithTheGuideline(int thread) {
    double dry = figure("torque-wrench", "m" + thread + "-steel", KnownUnit.NEWTON_METRES);
    assertThat(dry).isBetween(STEEL.get(thread).least(), STEEL.get(thread).most());
  }

  /** UL 486A: 30 and 50 lbf; ABYC E-11, table XVI: at least 15 and 30 lbf. */
  @ParameterizedTest
  @CsvSource({"pull-1-5, 30, 15", "pull-2-5, 50, 30"})
  void theFiguresForCrimpsAgreeWithTwoStandards(String name, double asked, double least) {
    double pull = figure("heat-shrink-terminals", name, KnownUnit.NEWTONS);
    assertThat(pull).isCloseTo(asked * POUND_FORCE, within(5.0));
    assertThat(pull).isGreaterThan(least * POUND_FORCE);
  }

  private static List<Torque> torques() {
    List<Torque> found = new ArrayList<>();
    library.all(Procedure.class).forEach(page -> add(found, page.id(), plain(page.body())));
    library.all(Material.class).forEach(page -> add(found, page.id(), plain(page.body())));
    return found;
  }

  private static void add(List<Torque> found, String page, String body) {
    for (String line : body.split("\n")) {
      if (line.contains("N·m")) {
        found(TORQUE_FOR, line)
            .forEach(hit -> found.add(torque(page, line, hit.group(2), hit.group(1))));
        found(THREAD_AT, TORQUE_FOR.matcher(line).replaceAll(""))
            .forEach(hit -> found.add(torque(page, line, hit.group(1), hit.group(2))));
      }
    }
  }

  private static Torque torque(String page, String line, String thread, String figure) {
    return new Torque(page, line, Integer.parseInt(thread), Double.parseDouble(figure));
  }

  private static Stream<MatchResult> found(Pattern pattern, String text) {
    return pattern.matcher(text).results();
  }

  private static double number(MatchResult hit, int group) {
    return Double.parseDouble(hit.group(group));
  }

  private static Page<Material> material(String id) {
    return library.material(id).orElseThrow();
  }

  private static Page<Procedure> procedure(String id) {
    return library.procedure(id).orElseThrow();
  }
}
