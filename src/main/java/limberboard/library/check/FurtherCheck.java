package limberboard.library.check;

import java.util.List;
import javax.measure.Quantity;
import limberboard.library.LibraryReader;
import limberboard.library.page.Page;

/**
 * A check of pages by somebody who knows more than the library does, such as which sums there are.
 * A {@link LibraryReader} is given such checks and runs them on every page of every snapshot.
 * Implementations are immutable.
 */
public interface FurtherCheck {
  /** Says what is wrong with a page. */
  void check(Page<?> page, Findings findings);

  /** Where a check says what it has found, and asks what the library knows. */
  interface Findings {
    /**
     * Reports an error.
     *
     * @param pointer the key as a JSON pointer: {@code /workings/0/use}
     * @param wrong what is wrong
     * @param right what would be right
     */
    void error(String pointer, String wrong, String right);

    /** What the models have as this measure; empty when no model has it. */
    List<Quantity<?>> measured(String measure);

    /** Reports that no model has this measure. */
    void noMeasure(String measure, String pointer);
  }
}
