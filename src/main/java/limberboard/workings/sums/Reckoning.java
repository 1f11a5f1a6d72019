package limberboard.workings.sums;

import java.util.List;

/** What came of reckoning a sum. */
public sealed interface Reckoning {

  /**
   * It could be computed.
   *
   * @param put what was put in, in the order of the inputs
   * @param answer results, working and warnings
   */
  record Done(List<InputValue> put, Answer answer) implements Reckoning {
    /** Copies the list. */
    public Done {
      put = List.copyOf(put);
    }
  }

  /**
   * It could not be computed.
   *
   * @param reasons what is wrong with which input, and what would be right; never empty
   */
  record Refused(List<String> reasons) implements Reckoning {
    /** Copies the list. */
    public Refused {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * What was put in at one input.
   *
   * @param input the input
   * @param text the value in words, in the input's unit
   * @param usual whether nobody put it in and the usual value stands
   */
  record InputValue(Input input, String text, boolean usual) {}
}
