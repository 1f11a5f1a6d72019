package limberboard.letters.recognise;

import java.util.Comparator;
import java.util.List;

/**
 * Whether what a letter tells is covered by the library at all: by the figures of its likeliest
 * symptom, those of whether it tells of a fault, and how the symptoms' chances stand to each other
 * (stacking: D. Wolpert, Stacked generalization, Neural Networks 5(2), 1992).
 */
final class Covered {
  private static final double LEAST = 1e-5;

  private Covered() {}

  /**
   * The figures from which it is reckoned.
   *
   * @param ofSymptoms the figures of the letter for each symptom, one at least
   * @param ofFault its figures for whether it tells of a fault
   */
  static double[] figures(Chances chances, List<double[]> ofSymptoms, double[] ofFault) {
    List<double[]> likeliest =
        ofSymptoms.stream()
            .sorted(Comparator.comparingDouble(chances.symptom()::chance).reversed())
            .toList();
    double first = chances.symptom().chance(likeliest.get(0));
    double second = likeliest.size() < 2 ? 0 : chances.symptom().chance(likeliest.get(1));
    double all = likeliest.stream().mapToDouble(chances.symptom()::chance).sum();
    double[] own = {
      Odds.of(chances.fault().chance(ofFault), LEAST),
      Odds.of(first, LEAST),
      Odds.of(second, LEAST),
      Odds.of(all, LEAST)
    };
    double[] best = likeliest.get(0);
    double[] figures = new double[own.length + best.length + ofFault.length];
    System.arraycopy(own, 0, figures, 0, own.length);
    System.arraycopy(best, 0, figures, own.length, best.length);
    System.arraycopy(ofFault, 0, figures, own.length + best.length, ofFault.length);
    return figures;
  }
}
