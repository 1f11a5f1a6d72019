package limberboard.proofread;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rules about what can hurt, each on a page that breaks it and on pages that come close. */
class SafetyRulesTest {
  @TempDir Path folder;
  private ProofreadPages pages;

  @BeforeEach
  void makePages() {
    pages = new ProofreadPages(folder);
  }

  @Test
  void wordsCallForACaution() {
    pages.work("break", "", "1. Drain the carburettors.");
    pages.work("carried", "cautions: [petrol-vapour]\n", "1. Drain the carburettors.");
    pages.work("linked", "", "1. Drain the carburettor: [vapour](../cautions/petrol-vapour.md).");
    pages.work("unless", "", "1. A smell of petrol goes to the yard.");
    pages.work("denied", "", "1. Never petrol.");
    assertThat(pages.found("no-caution", "break")).containsExactly("8 petrol-vapour");
    assertThat(pages.found("no-caution", "carried")).isEmpty();
    assertThat(pages.found("no-caution", "linked")).isEmpty();
    assertThat(pages.found("no-caution", "unless")).isEmpty();
    assertThat(pages.found("no-caution", "denied")).isEmpty();
  }

  @Test
  void aPlaceCallsForACaution() {
    pages.words("cautions: [{access: [slings, crane], carry: [petrol-vapour, sanding-dust]}]\n");
    pages.work("break", "access: [berth, crane]\n", "1. Look at it.");
    pages.work("other", "access: [berth]\ncautions: [sanding-dust]\n", "1. Look at it.");
    pages.work("carried", "access: [slings]\ncautions: [sanding-dust]\n", "1. Look at it.");
    assertThat(pages.found("no-caution", "break")).containsExactly("5 petrol-vapour");
    assertThat(pages.found("no-caution", "other")).isEmpty();
    assertThat(pages.found("no-caution", "carried")).isEmpty();
  }

  @Test
  void aRoundCarriesWhatTheWorkWithinItCarries() {
    pages.work("drain", "cautions: [petrol-vapour]\n", "1. Drain the petrol.");
    pages.work("round", "round: [{do: drain}]\n", "1. The petrol first.");
    pages.work("alone", "", "1. The petrol first.");
    assertThat(pages.found("no-caution", "round")).isEmpty();
    assertThat(pages.found("no-caution", "alone")).containsExactly("8 petrol-vapour");
  }

  @Test
  void aCheckOfASymptomIsWorkToo() {
    pages
        .workspace()
        .write(
            "articles/symptoms/stops.md",
            """
            ---
            title: Stops
            zones: [cabin]
            causes: [{id: air, title: Air, weight: 3, mend: mend}]
            checks:
              - id: look
                ask: Is it wet?
                how: Smell at the petrol tank.
                minutes: 1
                answers: [yes, no]
            ---
            """);
    assertThat(pages.found("no-caution", "stops")).containsExactly("8 petrol-vapour");
  }

  @Test
  void whatMakesSafeStandsBefore() {
    pages.work("break", "", "1. Part the fuel hose.\n2. Shut the fuel cock.");
    pages.work("right", "", "1. Shut the fuel cock.\n2. Part the fuel hose.");
    pages.work("same", "", "1. Shut the fuel cock before you part the hose.");
    pages.work("later", "", "1. Before you part the hose, wait.\n2. Shut the fuel cock.");
    assertThat(pages.found("safe-too-late", "break")).containsExactly("9 shut the fuel cock");
    assertThat(pages.found("safe-too-late", "right")).isEmpty();
    assertThat(pages.found("safe-too-late", "same")).isEmpty();
    assertThat(pages.found("safe-too-late", "later")).isEmpty();
  }

  @Test
  void whatMustMakeSafeIsMissedOnlyWithItsWords() {
    pages.work("break", "", "1. Wipe it with alcohol.\n2. Heat gun on.");
    pages.work("right", "", "1. Wipe it with alcohol.\n2. Bottle away. Heat gun on.");
    pages.work("without", "", "1. Wipe it with water.\n2. Heat gun on.");
    assertThat(pages.found("safe-too-late", "break")).containsExactly("9 bottle away");
    assertThat(pages.found("safe-too-late", "right")).isEmpty();
    assertThat(pages.found("safe-too-late", "without")).isEmpty();
  }

  @Test
  void aMaterialIsKeptOffWhatItSpoils() {
    String list = "materials: [{use: glue, amount: 1 ml}]\n";
    pages.work("break", list, "1. Spread neoprene glue on the acrylic.");
    pages.work("denied", list, "1. Neoprene glue never touches the acrylic.");
    pages.work(
        "far",
        list,
        "1. Spread neoprene glue. Let it dry for as long as the tin says, then go"
            + " on with the rest of it and look at the acrylic.");
    assertThat(pages.found("keep-off", "break")).containsExactly("9 glue");
    assertThat(pages.found("keep-off", "denied")).isEmpty();
    assertThat(pages.found("keep-off", "far")).isEmpty();
  }

  @Test
  void aFigureThatCarriesSafetyIsNotFromMemory() {
    pages.work("break", "", "1. Tighten it: 8 N·m, from memory.");
    pages.work("source", "sources: [torque from memory]\n", "1. Tighten it.");
    pages.work("maker", "", "1. Tighten it: 8 N·m, from memory; the maker's figure goes before.");
    pages.work("harmless", "", "1. The tin is blue, from memory.");
    pages.work("standard", "sources: [\"ISO 10239, named from memory\"]\n", "1. Look at the gas.");
    assertThat(pages.found("from-memory", "break")).containsExactly("8 N·m");
    assertThat(pages.found("from-memory", "source")).containsExactly("5 torque");
    assertThat(pages.found("from-memory", "maker")).isEmpty();
    assertThat(pages.found("from-memory", "harmless")).isEmpty();
    assertThat(pages.found("from-memory", "standard")).isEmpty();
  }

  @Test
  void sealantsThatSpoilEachOtherAreKeptApart() {
    pages.material(
        "pu",
        "Polyurethane",
        "sealant",
        "ml",
        "mixing: {family: polyurethane}\nkeep-off: [{what: fresh silicone, why: it stays soft}]");
    pages.material("sil", "Silicone", "sealant", "ml", "mixing: {family: silicone}");
    String both = "materials: [{use: pu, amount: 1 ml}, {use: sil, amount: 1 ml}]\n";
    pages.work("break", both, "1. Lay polyurethane, then silicone.");
    pages.work("apart", both, "1. Lay polyurethane. Silicone on another day.");
    assertThat(pages.found("not-together", "break")).containsExactly("5 sil");
    assertThat(pages.found("not-together", "apart")).isEmpty();
  }
}
