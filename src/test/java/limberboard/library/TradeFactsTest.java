package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo's own pages say what the trade says: common practice, no source. */
@ContentTest
class TradeFactsTest {
  private static Library library;
  private static Library empty;

  @BeforeAll
  static void read(@TempDir Path folder) throws IOException {
    library = new LibraryReader(new WorkspaceFolders(Path.of(""))).read();
    TestWorkspace pages = new TestWorkspace(folder);
    TradeFact.all()
        .forEach(
            fact ->
                pages.write(
                    "articles/procedures/" + fact.page() + ".md",
                    "---\ntitle: Nothing on it\nsystem: hull\nwork: mend\nskill: owner\n"
                        + "minutes: 1\n---\n"));
    empty = pages.library();
  }

  static Stream<TradeFact> facts() {
    return TradeFact.all().stream();
  }

  @ParameterizedTest
  @MethodSource("facts")
  void thePageHoldsIt(TradeFact fact) {
    assertThat(library.procedure(fact.page()))
        .as(fact.page())
        .hasValueSatisfying(
            page -> assertThat(new TradeFactCheck(page).holds(fact)).as(fact.rule()).isTrue());
  }

  @ParameterizedTest
  @MethodSource("facts")
  void aPageWithNothingOnItDoesNot(TradeFact fact) {
    assertThat(empty.procedure(fact.page()))
        .hasValueSatisfying(
            page -> assertThat(new TradeFactCheck(page).holds(fact)).as(fact.rule()).isFalse());
  }

  @Test
  void everyPartOfTheTradesListIsThere() {
    assertThat(facts().map(TradeFact::part).distinct())
        .containsExactlyInAnyOrder(
            "deck fittings",
            "hinges",
            "outboard",
            "locker gasket",
            "teak trim",
            "blocks",
            "clutches",
            "lashings",
            "forestay tie",
            "boom strop",
            "trip line",
            "anodes",
            "lifting keel",
            "bowsprit seal",
            "tiller extension",
            "crossbar joints",
            "sunken tiller",
            "taped pins",
            "mast foot",
            "groove stop",
            "shrouds",
            "turnbuckles",
            "winches",
            "fasteners",
            "safe order");
  }

  /** Common practice, no source: about a metre. */
  @Test
  void everyModelWithHanksTiesItsForestayWithAboutAMetre() {
    List<Page<Model>> tied =
        library.all(Model.class).stream()
            .filter(model -> offers(model.details(), "headsail-hanked"))
            .toList();
    assertThat(tied)
        .extracting(Page::id)
        .containsExactlyInAnyOrder("tarnwick-21", "tarnwick-26", "tarnwick-30");
    assertThat(tied)
        .allSatisfy(
            model ->
                assertThat(
                        TradeFactCheck.metres(model.details().measures().get("soft-forestay-tie")))
                    .as(model.id())
                    .isBetween(0.9, 1.2));
  }

  /** ISO 3448, table 1: grade VG 46 is 41.4 to 50.6 mm²/s at 40 °C (from memory). */
  @Test
  void theKeelsOilIsNamedByItsGradeAndTheGradeByItsLimits() {
    Page<Material> oil = library.material("hydraulic-oil-vg46").orElseThrow();
    assertThat(oil.title()).contains("ISO VG 46");
    assertThat(oil.head().sources()).anyMatch(source -> source.contains("41.4 to 50.6 mm²/s"));
  }

  private static boolean offers(Model model, String choice) {
    return model.equipment().stream()
        .flatMap(equipment -> equipment.choices().stream())
        .anyMatch(one -> one.id().equals(choice));
  }
}
