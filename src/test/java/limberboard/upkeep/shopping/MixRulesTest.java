package limberboard.upkeep.shopping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import limberboard.upkeep.shopping.MixWarning.Grade;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One case and its opposite for each rule of mixing. Common practice, no source. */
class MixRulesTest {
  @TempDir private Path root;
  private SmallStore store;

  @BeforeEach
  void pages() throws IOException {
    store =
        new SmallStore(root)
            .material(
                "pu",
                "group: sealant\nunit: ml\nmixing: {family: polyurethane}\ninstead: [silicone]")
            .material("silicone", "group: sealant\nunit: ml\nmixing: {family: silicone}")
            .material(
                "strong",
                "group: cleaner\nunit: ml\nmixing: {attacks: [{what: acrylic, why: it cracks}]}")
            .material("pane", "group: seal\nunit: m\nmixing: {touches: [acrylic]}")
            .material(
                "paint",
                "group: coating\nunit: ml\n"
                    + "mixing: {attacks: [{what: aluminium-under-water, why: it is eaten}]}")
            .material("zinc", "group: anode\nunit: piece\nmixing: {alloy: zinc}")
            .material("alu", "group: anode\nunit: piece\nmixing: {alloy: aluminium}")
            .material("mag", "group: anode\nunit: piece\nmixing: {alloy: magnesium}")
            .material("bolt", "group: fastener\nunit: piece\nmixing: {metal: stainless}")
            .material("paste", "group: grease\nunit: g\nmixing: {insulates: true}")
            .material("oil46", "group: oil\nunit: ml\nmixing: {oil: hydraulic, grade: ISO VG 46}")
            .material("oil32", "group: oil\nunit: ml\nmixing: {oil: hydraulic, grade: ISO VG 32}")
            .material("engine", "group: oil\nunit: ml\nmixing: {oil: engine, grade: SAE 15W-40}")
            .material("leadcharger", "group: tool\nmixing: {charges: [lead]}")
            .material("anycharger", "group: tool\nmixing: {charges: [lead, lithium]}")
            .material("lithiumcharger", "group: tool\nmixing: {charges: [lithium]}");
  }

  private ShoppingList with(String... materials) throws IOException {
    StringBuilder uses = new StringBuilder();
    for (String material : materials) {
      uses.append(uses.isEmpty() ? "" : ", ").append("{use: ").append(material).append("}");
    }
    return store.job("one", uses.toString()).list("one 2026-03-10");
  }

  private ShoppingList withTool(String tool) throws IOException {
    return store.job("one", "", "tools: [" + tool + "]").list("one 2026-03-10");
  }

  @Test
  void theTestsOwnPagesAreWithoutProblems() throws IOException {
    with("pu");
    assertThat(store.workspace().problems()).isEmpty();
  }

  @Test
  void sealantsInOneJobAreNeverMixed() throws IOException {
    assertThat(with("pu", "silicone").warnings())
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.grade()).isEqualTo(Grade.NEVER);
              assertThat(warning.materials()).containsExactly("pu", "silicone");
              assertThat(warning.work()).containsExactly("one");
              assertThat(warning.source()).isEqualTo(MixWarning.PRACTICE);
            });
    assertThat(with("pu").warnings()).isEmpty();
  }

  @Test
  void sealantsForDifferentWorkAreWorthCare() throws IOException {
    store.job("other", "{use: silicone}");
    store.job("one", "{use: pu}");
    assertThat(store.list("one 2026-03-10", "other 2026-03-11").warnings())
        .singleElement()
        .extracting(MixWarning::grade)
        .isEqualTo(Grade.TAKE_CARE);
  }

  @Test
  void whatAttacksTheThingBesideItIsNamed() throws IOException {
    assertThat(with("strong", "pane").warnings())
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.grade()).isEqualTo(Grade.NEVER);
              assertThat(warning.why()).isEqualTo("it cracks");
            });
    assertThat(with("strong").warnings()).isEmpty();
  }

  @Test
  void whatAttacksTheBoatIsNamed() throws IOException {
    assertThat(with("paint").warnings())
        .singleElement()
        .satisfies(warning -> assertThat(warning.what()).contains("Avocet", "saildrive"));
  }

  @ParameterizedTest(name = "{0} in {1} water: {2}")
  @CsvSource({
    "zinc, salt, ", "zinc, brackish, TAKE_CARE", "zinc, fresh, NEVER",
    "alu, salt, ", "alu, brackish, ", "alu, fresh, TAKE_CARE",
    "mag, salt, NEVER", "mag, brackish, NEVER", "mag, fresh, "
  })
  void anAnodeSuitsItsWater(String anode, String water, Grade grade) throws IOException {
    store.water(water);
    if (grade == null) {
      assertThat(with(anode).warnings()).isEmpty();
    } else {
      assertThat(with(anode).warnings()).extracting(MixWarning::grade).containsExactly(grade);
    }
  }

  @Test
  void anodesOfTwoAlloysDoNotGoOnOneBoat() throws IOException {
    assertThat(with("zinc", "alu").warnings())
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.grade()).isEqualTo(Grade.NEVER);
              assertThat(warning.what()).isEqualTo("Anodes of zinc and aluminium on one boat");
            });
    store.stock("zinc,2,,,\n");
    assertThat(with("alu").warnings())
        .singleElement()
        .extracting(MixWarning::grade)
        .isEqualTo(Grade.TAKE_CARE);
  }

  @Test
  void stainlessInCarbonWantsSomethingBetween() throws IOException {
    assertThat(with("bolt").warnings())
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.what()).contains("carbon mast");
              assertThat(warning.why()).contains("put paste on").contains("not among");
            });
    assertThat(with("bolt", "paste").warnings())
        .singleElement()
        .satisfies(warning -> assertThat(warning.why()).contains("it is on this list"));
  }

  @Test
  void oilsOfTwoGradesDoNotShareAFilling() throws IOException {
    assertThat(with("oil46", "oil32").warnings())
        .extracting(MixWarning::grade)
        .containsExactly(Grade.NEVER);
    assertThat(with("oil46", "engine").warnings()).isEmpty();
    store.stock("oil32,500 ml,,,\n");
    assertThat(with("oil46").warnings())
        .extracting(MixWarning::grade)
        .containsExactly(Grade.TAKE_CARE);
  }

  @Test
  void aChargerIsMadeForItsBattery() throws IOException {
    assertThat(withTool("leadcharger").warnings())
        .extracting(MixWarning::grade)
        .containsExactly(Grade.NEVER);
    assertThat(withTool("anycharger").warnings())
        .extracting(MixWarning::grade)
        .containsExactly(Grade.TAKE_CARE);
    assertThat(withTool("lithiumcharger").warnings()).isEmpty();
  }

  @Test
  void aSubstituteSaysWhyNotAndWhatThereIs() throws IOException {
    store.stock("silicone,120 ml,,,\n");
    Substitute alone = with("pu").lines().get(0).substitutes().get(0);
    assertThat(alone.isOffered()).isTrue();
    assertThat(alone.inStock()).isEqualTo(120);
    store.material("hybrid", "group: sealant\nunit: ml\nmixing: {family: hybrid}");
    ShoppingList both = with("pu", "hybrid");
    Substitute beside =
        both.lines().stream()
            .filter(line -> line.material().id().equals("pu"))
            .findFirst()
            .orElseThrow()
            .substitutes()
            .get(0);
    assertThat(beside.against()).singleElement().asString().startsWith("not beside hybrid");
    assertThat(beside.isOffered()).isFalse();
  }
}
