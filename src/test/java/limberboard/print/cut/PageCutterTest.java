package limberboard.print.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.print.PdfText;
import limberboard.print.SmallYard;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.BlockText;
import limberboard.print.text.PlainText;
import limberboard.print.text.TextLines;
import org.junit.jupiter.api.Test;

/** The same page read for two boats, and for none: what differs, and what must not. */
class PageCutterTest {
  private final SmallYard yard = new SmallYard();
  private final CutPage avocets = yard.cut("renew-seal", "avocet");
  private final CutPage knots = yard.cut("renew-seal", "knot");
  private final CutPage everybodys = yard.uncut("renew-seal");

  @Test
  void theFixtureIsSound() {
    assertThat(yard.workspace().problems()).isEmpty();
  }

  @Test
  void thePageSaysWhichBoatItIsCutTo() {
    assertThat(avocets.cutFor()).isEqualTo("Cut to Avocet: Cruiser, hull 3, built 2012");
    assertThat(everybodys.cutFor()).isEmpty();
  }

  @Test
  void stepsForOtherBoatsAreLeftOutWithTheirSubsections() {
    assertThat(part(avocets, Part.Role.BODY))
        .contains("Shut the seacock", "Press the seal out.", "Warm it.", "It is dry")
        .doesNotContain("Draw the coupling.", "With the shaft");
    assertThat(part(knots, Part.Role.BODY))
        .contains("Shut the seacock", "Draw the coupling.", "It is dry")
        .doesNotContain("Press the seal out.", "Warm it.", "With the saildrive");
  }

  @Test
  void withoutABoatEverythingIsShownWithANoteWhichBoatsItIsFor() {
    assertThat(part(everybodys, Part.Role.BODY))
        .contains("Press the seal out.", "Draw the coupling.", "Warm it.")
        .containsSubsequence(
            "With the saildrive", "Only for boats with saildrive.", "Open the leg.")
        .containsSubsequence("With the shaft", "Only for boats with shaft.", "Draw the coupling.");
    assertThat(part(everybodys, Part.Role.TOOLS)).contains("Puller (only for boats with shaft)");
    assertThat(everybodys.part(Part.Role.LEFT_OUT)).isEmpty();
  }

  @Test
  void whatIsLeftOutIsListedWithTheReason() {
    assertThat(part(avocets, Part.Role.LEFT_OUT))
        .contains(
            "the section “With the shaft”: Avocet has no shaft", "Puller: Avocet has no shaft");
    assertThat(part(knots, Part.Role.LEFT_OUT))
        .contains(
            "the section “With the saildrive”: Knot has no saildrive",
            "Solvent: Knot has no saildrive");
  }

  @Test
  void cautionsComeFirstWithThoseOfTheMaterialsThatTheBoatNeeds() {
    for (CutPage page : List.of(avocets, knots, everybodys)) {
      assertThat(page.parts().get(0).role()).isEqualTo(Part.Role.CAUTIONS);
      assertThat(page.cautions().get(0))
          .isEqualTo(
              new Block.CautionBox(
                  "ashore",
                  "Boat ashore",
                  "A boat on props can fall.",
                  List.of("Look at the props.", "Stay out from under her."),
                  "The yard comes before this page.",
                  ""));
    }
    assertThat(ids(avocets)).containsExactly("ashore", "vapour", "fire");
    assertThat(ids(knots)).containsExactly("ashore", "vapour");
    assertThat(ids(everybodys)).containsExactly("ashore", "vapour", "fire");
    assertThat(avocets.cautions().get(1).because()).isEqualTo("Sealant");
  }

  @Test
  void accessIsInOrderAndOnlyWhatTheBoatNeeds() {
    assertThat(part(avocets, Part.Role.ACCESS))
        .containsSubsequence(
            "To get there: Hauled out (3 h)", "Leg opened (20 min)", "Engine cover off (3 min)");
    assertThat(part(avocets, Part.Role.FACTS))
        .contains("1 h 30 min, and 3 h 23 min to get there: 4 h 53 min in all");
    assertThat(part(knots, Part.Role.ACCESS))
        .contains("To get there: Engine cover off (3 min)")
        .doesNotContain("Leg opened", "Hauled out");
    assertThat(part(everybodys, Part.Role.FACTS))
        .contains("1 h 30 min, besides what it takes to get there");
  }

  @Test
  void amountsAreWorkedOutForTheBoat() {
    assertThat(part(avocets, Part.Role.MATERIALS))
        .contains("7.2 ml", "400 × 6 × 3 mm = 7.2 ml; a 290 ml cartridge holds 40 of these")
        .contains("36 ml", "2 m (hatch seal) × 6 mm × 3 mm = 36 ml")
        .contains("1 × cartridge of 290 ml, for all uses", "see above")
        .contains("50 ml", "1 × can of 1 l")
        .contains("Washer", "the boat's anodes");
    assertThat(part(knots, Part.Role.MATERIALS)).doesNotContain("Solvent");
    assertThat(part(everybodys, Part.Role.MATERIALS))
        .contains("depends on the boat: its hatch seal", "Solvent (only for boats with saildrive)");
  }

  @Test
  void theIntervalIsTheBoats() {
    assertThat(part(avocets, Part.Role.AGAIN))
        .contains(
            "every 2 years or every four seasons, whichever comes first, ashore with the mast up;"
                + " from the boat's third season on; halved for Avocet (used for"
                + " charter)");
    assertThat(part(knots, Part.Role.AGAIN))
        .contains("from the boat's third season on")
        .doesNotContain("halved");
    assertThat(part(everybodys, Part.Role.AGAIN)).contains("halved for boats used for charter");
  }

  @Test
  void theRestOfAProcedureIsInWords() {
    assertThat(part(avocets, Part.Role.FACTS)).contains("an owner used to tools", "Where:", "bow");
    assertThat(part(avocets, Part.Role.AGAIN)).contains("Look again: after 1 month");
    assertThat(part(avocets, Part.Role.LOOK_FOR))
        .contains("Good: Dry and springy.", "Bad:  Cracked or wet.");
    assertThat(part(avocets, Part.Role.RELATED)).contains("Puts right: Water in the bilge");
    assertThat(part(avocets, Part.Role.SOURCES)).contains("common practice, no source");
  }

  @Test
  void aPageThatIsNotForTheBoatSaysSo() {
    assertThat(part(yard.cut("check-gas", "avocet"), Part.Role.NOTICE))
        .contains("This page is not for Avocet, which has no gas stove.");
    assertThat(part(yard.uncut("check-gas"), Part.Role.NOTICE))
        .contains("This page is only for boats with gas stove.");
  }

  @Test
  void aSymptomShowsCautionsThenCausesAndChecksForTheBoat() {
    CutPage page = yard.cut("wet-bilge", "avocet");
    assertThat(ids(page)).containsExactly("ashore", "gas", "fire");
    assertThat(page.parts())
        .extracting(Part::role)
        .containsSubsequence(
            Part.Role.CAUTIONS, Part.Role.BODY, Part.Role.CAUSES, Part.Role.CHECKS);
    assertThat(part(page, Part.Role.CAUSES))
        .containsSubsequence("1. A gas hose sweats.", "2. The drive's seal leaks. It hardens.")
        .contains("Mend: Renew the drive's seal (an owner used to tools)")
        .contains("More likely on Avocet: used for charter.")
        .doesNotContain("30 years");
    assertThat(part(yard.uncut("wet-bilge"), Part.Role.CAUSES))
        .contains("This is only for boats with saildrive.")
        .contains("More likely on boats used for charter.")
        .contains("More likely on boats at least 30 years old.");
    assertThat(part(page, Part.Role.CHECKS))
        .containsSubsequence("Does it taste of salt?", "[Caution: Fire]", "Dip a finger in.")
        .contains("Speaks for: The drive's seal leaks (usually).")
        .contains("Speaks against: A gas hose sweats (never).");
    assertThat(part(yard.cut("wet-bilge", "knot"), Part.Role.CAUSES))
        .doesNotContain("The drive's seal leaks");
    assertThat(part(yard.cut("wet-bilge", "knot"), Part.Role.CHECKS))
        .doesNotContain("The drive's seal leaks");
  }

  @Test
  void aMaterialShowsPacksAndWhatItMustNotTouch() {
    assertThat(part(yard.uncut("sealant"), Part.Role.FACTS))
        .contains("cartridge of 290 ml", "1 year", "2 weeks", "acrylic: it crazes", "Solvent");
    assertThat(ids(yard.uncut("sealant"))).containsExactly("vapour");
  }

  @Test
  void aModelShowsItsEquipmentAndMarksTheBoats() {
    String tables = text(yard.cut("cruiser", "avocet"));
    assertThat(tables)
        .contains("Saildrive (Avocet has it)", "from 2015 on", "2010–2014", "hatch seal", "2 m")
        .contains("Leg opened", "20 min")
        .doesNotContain("Shaft (Avocet has it)");
  }

  @Test
  void aCautionPageBeginsWithItsDanger() {
    CutPage page = yard.uncut("fire");
    assertThat(ids(page)).containsExactly("fire");
    assertThat(part(page, Part.Role.BODY)).contains("More.");
  }

  private static List<String> ids(CutPage page) {
    return page.cautions().stream().map(Block.CautionBox::id).toList();
  }

  private static String text(CutPage page) {
    return PdfText.flat(new PlainText().render(page, 200));
  }

  private static String part(CutPage page, Part.Role role) {
    TextLines out = new TextLines(200);
    page.parts().stream()
        .filter(part -> part.role() == role)
        .flatMap(part -> part.blocks().stream())
        .forEach(block -> block.to(new BlockText(out)));
    assertThat(out.toString()).as("the part %s of %s", role, page.title()).isNotEmpty();
    return out.toString();
  }
}
