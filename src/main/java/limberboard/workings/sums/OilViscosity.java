package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.DEGREES_CELSIUS;
import static limberboard.library.value.KnownUnit.PIECES;
import static limberboard.library.value.KnownUnit.SQUARE_MILLIMETRES_A_SECOND;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.workings.sums.Input.Option;

/** Viscosity of a hydraulic oil at the coldest and warmest, and which grade suits both. */
final class OilViscosity implements Sum {
  private static final double REFERENCE_C = 40;
  private static final double HOT_C = 100;
  private static final String USUAL = "vg46";

  @Override
  public SumText text() {
    return new SumText(
        "oil-viscosity",
        "Hydraulic oil at the coldest and the warmest",
        "How thick is an oil at a temperature, and which grade suits from the coldest to the"
            + " warmest?",
        "log₁₀ log₁₀ (ν + 0.7) = a − b · log₁₀ T, T in K, through the grade's middle at 40 °C and"
            + " the viscosity at 100 °C that the viscosity index gives",
        "ISO 3448 for the grades, Ubbelohde and Walther's line as in ASTM D341, viscosity index ISO"
            + " 2909 (ASTM D2270); 12 to 1000 mm²/s for a small piston or gear pump from memory:"
            + " the pump's own sheet counts",
        "Mineral hydraulic oils that flow, above their pour point, above 2 mm²/s. The grade allows"
            + " 10 % to either side. What the seals stand is another question.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Choice.of("grade", "Grade", grades()).usually(USUAL),
        Input.Number.of("index", "Viscosity index", PIECES, 100, 0, 250).soundWithin(50, 200),
        Input.Number.of("at-100", "Viscosity at 100 °C", SQUARE_MILLIMETRES_A_SECOND, 6.8, 2, 60)
            .orElse("from the viscosity index"),
        Input.Number.of("coldest", "Coldest", DEGREES_CELSIUS, 0, -50, 120).soundWithin(-20, 100),
        Input.Number.of("warmest", "Warmest", DEGREES_CELSIUS, 40, -50, 150).soundWithin(-20, 100),
        Input.Number.of("thickest", "Thickest allowed", SQUARE_MILLIMETRES_A_SECOND, 1000, 2, 1e5),
        Input.Number.of("thinnest", "Thinnest allowed", SQUARE_MILLIMETRES_A_SECOND, 12, 1, 1000));
  }

  private static List<Option> grades() {
    return OilGrade.ALL.stream().map(grade -> new Option(grade.word(), grade.title())).toList();
  }

  @Override
  public Answer work(CheckedInputs given) {
    OilGrade grade = OilGrade.of(given.word("grade"));
    double index = given.number("index");
    double hot =
        given.maybe("at-100").orElseGet(() -> ViscosityIndex.at100(grade.midpoint(), index));
    ViscosityLine line =
        ViscosityLine.through(
            REFERENCE_C, grade.midpoint(), HOT_C, Math.min(hot, grade.midpoint()));
    Limits limits =
        new Limits(
            Math.min(given.number("coldest"), given.number("warmest")),
            Math.max(given.number("coldest"), given.number("warmest")),
            given.number("thickest"),
            given.number("thinnest"));
    double cold = line.at(limits.coldest());
    double warm = line.at(limits.warmest());
    return Answer.empty()
        .working(
            grade.midpoint()
                + " mm²/s at 40 °C, "
                + Answer.say(hot, SQUARE_MILLIMETRES_A_SECOND)
                + " at 100 °C; a = "
                + Answer.say(line.a())
                + ", b = "
                + Answer.say(line.b()))
        .working(at(limits.coldest(), cold) + "; " + at(limits.warmest(), warm))
        .result("cold", "At the coldest", cold, SQUARE_MILLIMETRES_A_SECOND)
        .result("warm", "At the warmest", warm, SQUARE_MILLIMETRES_A_SECOND)
        .said("suits", "Grades that suit both", limits.suiting(index))
        .warnIf(cold > limits.thickest(), "Too thick at the coldest: the pump starves and labours.")
        .warnIf(warm < limits.thinnest(), "Too thin at the warmest: the pump slips and wears.")
        .warnIf(hot > grade.midpoint(), "No oil is thicker at 100 °C than at 40 °C.")
        .warnIf(
            warm < ViscosityLine.HOLDS_FROM,
            "Below 2 mm²/s the simple form of the line does not hold.");
  }

  private static String at(double celsius, double nu) {
    return Answer.say(nu, SQUARE_MILLIMETRES_A_SECOND)
        + " at "
        + Answer.say(celsius, DEGREES_CELSIUS);
  }

  /**
   * What an oil has to meet.
   *
   * @param coldest °C
   * @param warmest °C
   * @param thickest mm²/s
   * @param thinnest mm²/s
   */
  private record Limits(double coldest, double warmest, double thickest, double thinnest) {
    String suiting(double index) {
      String titles =
          OilGrade.ALL.stream()
              .filter(grade -> suits(grade.midpoint(), index))
              .map(OilGrade::title)
              .collect(Collectors.joining(", "));
      return titles.isEmpty() ? "none with this viscosity index" : titles;
    }

    private boolean suits(double at40, double index) {
      ViscosityLine line =
          ViscosityLine.through(REFERENCE_C, at40, HOT_C, ViscosityIndex.at100(at40, index));
      return line.at(coldest) <= thickest && line.at(warmest) >= thinnest;
    }
  }
}
