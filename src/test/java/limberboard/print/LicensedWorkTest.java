package limberboard.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import limberboard.print.page.CutPage;
import limberboard.print.picture.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What only a licensed person may do is in none of the outputs. */
class LicensedWorkTest {
  private static final SmallYard YARD = new SmallYard();

  /** The same page for a boat that has gas, one that has not, and none; in every output. */
  static Stream<String> allOutputs() {
    return Stream.of(
            YARD.cut("check-gas", "knot"), YARD.cut("check-gas", "avocet"), YARD.uncut("check-gas"))
        .flatMap(LicensedWorkTest::outputs);
  }

  private static Stream<String> outputs(CutPage page) {
    return Stream.of(
            YARD.text(page),
            YARD.xhtml(page, Look.LIGHT),
            YARD.xhtml(page, Look.DARK),
            PdfText.of(YARD, page))
        .map(PdfText::flat);
  }

  @ParameterizedTest
  @MethodSource("allOutputs")
  void stepsAreNotPrinted(String output) {
    assertThat(output)
        .doesNotContain("Undo the union nut")
        .doesNotContain("unscrew the regulator")
        .doesNotContain("What the fitter does");
  }

  @ParameterizedTest
  @MethodSource("allOutputs")
  void neitherAreToolsAndMaterialsButTheirCautionsStay(String output) {
    assertThat(output).doesNotContain("Spanner").doesNotContain("30 ml");
    assertThat(output).contains("It burns.");
  }

  @ParameterizedTest
  @MethodSource("allOutputs")
  void whoMayDoItAndWhatTheOwnerMayCheckArePrinted(String output) {
    assertThat(output)
        .contains("Only a person licensed for this work may do it.")
        .contains("Gas explodes.")
        .contains("What is yours to do")
        .contains("Your country's rules come first.")
        .contains("What you may check yourself")
        .contains("Read the date on the hose.")
        .contains("No smell anywhere.")
        .contains("A person licensed for it does this work, so its steps are not printed here.");
  }

  @Test
  void aLicensedCheckDoesNotSayHow() {
    List<String> outputs = outputs(YARD.cut("wet-bilge", "knot")).toList();
    assertThat(outputs)
        .allSatisfy(
            output ->
                assertThat(output)
                    .contains("Does the gauge fall?")
                    .contains("A person licensed for it makes this check")
                    .doesNotContain("Secretly turn the union"));
  }

  @Test
  void ofAPageThatDoesNotSayWhatIsTheOwnersNothingIsPrinted() {
    assertThat(outputs(YARD.cut("check-mains", "knot")))
        .allSatisfy(
            output ->
                assertThat(output)
                    .contains("Only a person licensed for this work may do it.")
                    .doesNotContain("bare wire")
                    .doesNotContain("What is yours to do"));
  }

  @Test
  void workForTheYardSaysSoAndPrints() {
    assertThat(outputs(YARD.cut("lift-boat", "knot")))
        .allSatisfy(
            output -> assertThat(output).contains("This is work for the yard.", "Sling her."));
  }
}
