package limberboard.workings.sums;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.library.page.SumUse;

/**
 * A sum as a page shows it: with the page's numbers, and the boat's own where a boat is known.
 *
 * @param sum the sum
 * @param title what it is reckoned for
 * @param reckoning what came of it
 * @param notes numbers that depend on the boat and are not known
 */
public record ShownSum(Sum sum, String title, Reckoning reckoning, List<String> notes) {
  /** Copies the list. */
  public ShownSum {
    notes = List.copyOf(notes);
  }

  /**
   * Reckons a page's sum.
   *
   * @param sums the sums there are
   * @param use what the page says
   * @param boat the boat, or none
   * @return empty when there is no such sum
   */
  public static Optional<ShownSum> of(Sums sums, SumUse use, Optional<Boat> boat) {
    return sums.sum(use.use()).map(sum -> of(sum, use, boat));
  }

  private static ShownSum of(Sum sum, SumUse use, Optional<Boat> boat) {
    PutIn put = PutIn.of(sum, use.with(), boat);
    String title = use.title().isEmpty() ? sum.text().title() : use.title();
    return new ShownSum(sum, title, sum.reckon(put.values()), put.notes());
  }
}
