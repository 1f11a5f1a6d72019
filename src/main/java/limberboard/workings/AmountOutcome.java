package limberboard.workings;

import javax.measure.Quantity;

/** What the working of an amount came to. */
public sealed interface AmountOutcome {

  /**
   * It is known.
   *
   * @param amount in the material's counting unit; whole where pieces are counted
   */
  record Reckoned(Quantity<?> amount) implements AmountOutcome {}

  /**
   * It hangs on something that the boat's model page does not know, or on the boat when there is
   * none.
   *
   * @param measure the measure that is missing
   * @param sentence what to tell the reader
   */
  record ToMeasure(String measure, String sentence) implements AmountOutcome {}

  /** The page names the material without an amount: a little, as needed. */
  record NotStated() implements AmountOutcome {}

  /**
   * The page asks for something that cannot be: a bead of a fastener, metres of oil.
   *
   * @param wrong what does not agree
   * @param right what would
   */
  record Mistaken(String wrong, String right) implements AmountOutcome {}
}
