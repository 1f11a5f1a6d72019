package limberboard.letters.recognise;

import java.util.List;
import java.util.Locale;

/**
 * How well said chances hold.
 *
 * @param brier the mean square of how far they are off, 0 (best) to 1 (G. Brier, Verification of
 *     forecasts expressed in terms of probability, Monthly Weather Review 78(1), 1950; for an event
 *     that happens or not)
 * @param error how far the said chances are from what then happens, on average over ten equal bins,
 *     0 (best) to 1 (expected calibration error: M. Naeini, G. Cooper and M. Hauskrecht, Obtaining
 *     well calibrated probabilities using Bayesian binning, AAAI 2015)
 * @param all how many chances were said
 */
record ChanceQuality(double brier, double error, int all) {
  private static final int BINS = 10;

  /** A chance that was said, 0 to 1, and whether it then was so. */
  record Said(double chance, boolean so) {}

  /** Of chances that were said; 0 of none. */
  static ChanceQuality of(List<Said> said) {
    double squares = 0;
    double[] chances = new double[BINS];
    double[] so = new double[BINS];
    for (Said each : said) {
      int bin = (int) Math.min(BINS - 1, each.chance() * BINS);
      chances[bin] += each.chance();
      so[bin] += each.so() ? 1 : 0;
      squares += Math.pow(each.chance() - (each.so() ? 1 : 0), 2);
    }
    double off = 0;
    for (int bin = 0; bin < BINS; bin++) {
      off += Math.abs(chances[bin] - so[bin]);
    }
    int all = said.size();
    return new ChanceQuality(all == 0 ? 0 : squares / all, all == 0 ? 0 : off / all, all);
  }

  /** In words. */
  String line() {
    return String.format(
        Locale.ROOT,
        "chances of the symptom said first, %d letters: Brier score %.3f, calibration error %.3f%n",
        all,
        brier,
        error);
  }
}
