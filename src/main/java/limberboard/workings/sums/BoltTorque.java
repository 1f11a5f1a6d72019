package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.KILONEWTON;
import static limberboard.library.value.KnownUnit.NEWTONS_ON_SQUARE_MILLIMETRE;
import static limberboard.library.value.KnownUnit.NEWTON_METRES;
import static limberboard.library.value.KnownUnit.PIECES;
import static limberboard.library.value.KnownUnit.SQUARE_MILLIMETRE;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import limberboard.workings.sums.Input.Option;

/** Preload and torque of stainless bolts. */
final class BoltTorque implements Sum {
  private static final double KILO = 1000;
  private static final double GALLS_FROM = 0.2;
  private static final int LEAST_SHARE = 10;

  @Override
  public SumText text() {
    return new SumText(
        "bolt-torque",
        "Torque and preload of stainless bolts",
        "How tight may a stainless bolt be drawn, and what torque is that?",
        "F = A · ν · R / √(1 + 3 · (1.5 · d₂/d₀ · (P/(π · d₂) + 1.155 · μ))²) and T = F · (0.159 ·"
            + " P + 0.578 · d₂ · μ + (face + hole)/4 · μ): A the stress area, d₀ its diameter, d₂"
            + " the pitch diameter, P the pitch, μ the friction, R the 0.2 % stress, ν the share of"
            + " it that is used; K = T / (F · d)",
        "Kellermann and Klein's formula in the form of VDI 2230; diameters ISO 724, stress areas"
            + " ISO 898-1, 0.2 % stress ISO 3506-1 (class 50: 210, 70: 450, 80: 600 N/mm²); bearing"
            + " faces ISO 4014 and holes ISO 273 from memory",
        "Coarse threads M4 to M16 with hexagon heads, metal on metal, at room temperature. Where a"
            + " page or a maker gives a torque, that one counts. Through a cored or thin laminate,"
            + " on plastic, or with sealant under the fitting, the ground gives way long before the"
            + " bolt: draw up until the sealant just shows, not by this torque.");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.Choice.of(
                "thread",
                "Thread",
                Arrays.stream(IsoThread.values()).map(t -> new Option(t.word(), t.name())).toList())
            .usually("m8"),
        Input.Choice.of(
            "steel",
            "Steel and class",
            option("A4-70"),
            option("A4-80"),
            option("A4-50"),
            option("A2-70"),
            option("A2-80"),
            option("A2-50")),
        Input.Number.of("friction", "Friction in thread and under head", PIECES, 0.14, 0.04, 0.6)
            .soundWithin(0.08, 0.3),
        Input.Number.of("share", "Share of the 0.2 % stress used", HUNDREDTHS, 70, LEAST_SHARE, 100)
            .soundWithin(LEAST_SHARE, 90));
  }

  private static Option option(String title) {
    return new Option(title.toLowerCase(Locale.ROOT), title);
  }

  /** The 0.2 % stress of a class, N/mm²: ISO 3506-1. */
  static double stress(String steel) {
    return switch (steel.substring(steel.indexOf('-') + 1)) {
      case "50" -> 210;
      case "80" -> 600;
      default -> 450;
    };
  }

  @Override
  public Answer work(CheckedInputs given) {
    ThreadSize thread = IsoThread.of(given.word("thread")).size();
    double stress = stress(given.word("steel"));
    double friction = given.number("friction");
    double preload = thread.preload(stress, given.number("share") / 100, friction);
    double torque = thread.torque(preload, friction);
    return Answer.empty()
        .working(
            "A = "
                + Answer.say(thread.stressArea(), SQUARE_MILLIMETRE)
                + ", d₂ = "
                + Answer.say(thread.pitchDiameter())
                + " mm, R = "
                + Answer.say(stress, NEWTONS_ON_SQUARE_MILLIMETRE))
        .working(
            "F = "
                + Answer.say(preload / KILO, KILONEWTON)
                + " at "
                + Answer.say(given.number("share"), HUNDREDTHS)
                + " of R and μ = "
                + Answer.say(friction))
        .working("T = F × arm = " + Answer.say(torque, NEWTON_METRES))
        .result("torque", "Torque", torque, NEWTON_METRES)
        .result("preload", "Preload", preload / KILO, KILONEWTON)
        .result("yields", "Begins to stretch at", thread.stressArea() * stress / KILO, KILONEWTON)
        .result("k", "K in T = K · F · d", torque * KILO / (preload * thread.diameter()), PIECES)
        .warnIf(
            friction > GALLS_FROM,
            "Dry stainless on stainless galls and seizes, and the torque then says nothing. Use a"
                + " paste or grease in the thread and reckon with 0.10 to 0.16.");
  }
}
