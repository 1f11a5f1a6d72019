package limberboard.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The same page read for two boats: what differs, and what must not. */
class PageCutterTest {
  private final SmallYard yard = new SmallYard();
  private final CutPage avocets = yard.cut("renew-seal", "avocet");
  private final CutPage knots = yard.cut("renew-seal", "knot");

  @Test
  void theFixtureIsSound() {
    assertThat(yard.workspace().problems()).isEmpty();
  }

  @Test
  void stepsForOtherBoatsAreLeftOutWithTheirSubsections() {
    assertThat(body(avocets))
        .contains("Press the seal out.", "Warm it.", "It is dry")
        .doesNotContain("Draw the coupling.");
    assertThat(body(knots))
        .contains("Draw the coupling.", "It is dry")
        .doesNotContain("Press the seal out.", "Warm it.");
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
    assertThat(avocets.parts().get(0).role()).isEqualTo(Part.Role.CAUTIONS);
    assertThat(avocets.cautions())
        .extracting(Block.CautionBox::id)
        .containsExactly("ashore", "vapour", "fire");
    assertThat(knots.cautions())
        .extracting(Block.CautionBox::id)
        .containsExactly("ashore", "vapour");
  }

  @Test
  void accessIsInOrderAndOnlyWhatTheBoatNeeds() {
    assertThat(part(avocets, Part.Role.ACCESS))
        .containsSubsequence("Hauled out (3 h)", "Leg opened (20 min)", "Engine cover off (3 min)");
    assertThat(part(avocets, Part.Role.FACTS))
        .contains("1 h 30 min, and 3 h 23 min to get there: 4 h 53 min in all");
    assertThat(part(knots, Part.Role.ACCESS))
        .contains("Engine cover off (3 min)")
        .doesNotContain("Leg opened", "Hauled out");
  }

  private String body(CutPage page) {
    return part(page, Part.Role.BODY);
  }

  private String part(CutPage page, Part.Role role) {
    TextLines out = new TextLines(200);
    page.part(role).orElseThrow().blocks().forEach(new BlockText(out)::block);
    return out.toString();
  }
}
