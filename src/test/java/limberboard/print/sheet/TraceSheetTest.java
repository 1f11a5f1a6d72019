package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.print.SmallYard;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import org.junit.jupiter.api.Test;

/** Where a trace stands, on paper. */
class TraceSheetTest {
  private final SmallYard yard = new SmallYard();
  private final Trace trace = Trace.begin(fault("wet-bilge", "avocet"));

  @Test
  void cautionsComeFirstAndThenWhatToDoNext() {
    CutPage sheet = sheet(trace);
    assertThat(sheet.parts().get(0).role()).isEqualTo(Part.Role.CAUTIONS);
    assertThat(sheet.cautions()).extracting(Block.CautionBox::id).contains("ashore");
    assertThat(text(trace))
        .containsSubsequence(
            "Water in the bilge",
            "Cut to Avocet",
            "CAUTION: Boat ashore",
            "Next",
            trace.next().text(),
            "Why:",
            "Causes",
            "The chances before any answer: the workshop's estimate.",
            "A gas hose sweats",
            "The drive's seal leaks");
  }

  @Test
  void chancesAreTheTraces() {
    String text = text(trace);
    trace
        .ranking()
        .forEach(
            ranked ->
                assertThat(text)
                    .containsPattern(
                        "\\Q"
                            + ranked.cause().title()
                            + "\\E +\\Q"
                            + ranked.word()
                            + "\\E +"
                            + Math.round(100 * ranked.chance())));
  }

  @Test
  void answersAreListedWithWhatTheyChanged() {
    Trace answered = trace.answer("taste", "salt");
    assertThat(text(trace)).doesNotContain("What was found");
    assertThat(text(answered))
        .contains("What was found", "Does it taste of salt?", "salt")
        .contains(answered.trail().get(0).changed());
  }

  @Test
  void howALicensedCheckIsMadeIsNotPrinted() {
    Trace licensed = Trace.begin(fault("smell-of-gas", "knot"));
    assertThat(licensed.next().id()).isEqualTo("pressure");
    assertThat(text(licensed))
        .contains("Does the pressure fall?", "A person licensed for it makes this check")
        .doesNotContain("Secretly turn the union");
  }

  private Fault fault(String symptom, String boat) {
    Page<Symptom> page = yard.workspace().library().symptom(symptom).orElseThrow();
    return Fault.of(page, yard.boat(boat), yard.workspace().library(), List.of());
  }

  private CutPage sheet(Trace trace) {
    return new TraceSheet(yard.workspace().library()).of(trace);
  }

  private String text(Trace trace) {
    return new PlainText().render(sheet(trace), 1000);
  }
}
