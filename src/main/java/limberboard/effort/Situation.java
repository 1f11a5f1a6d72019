package limberboard.effort;

import java.util.BitSet;

/**
 * How far a trace has come, as numbers. Immutable: everything is copied on the way in and out.
 *
 * @param chances the chance of each cause, summing to 1
 * @param open access already open and paid for
 * @param asked checks that are not to be proposed again
 * @param tried causes whose mend has been tried without success
 */
public record Situation(double[] chances, BitSet open, BitSet asked, BitSet tried) {
  /** Copies everything. */
  public Situation {
    chances = chances.clone();
    open = (BitSet) open.clone();
    asked = (BitSet) asked.clone();
    tried = (BitSet) tried.clone();
  }

  /** The chance of each cause. */
  @Override
  public double[] chances() {
    return chances.clone();
  }

  /** Access already open. */
  @Override
  public BitSet open() {
    return (BitSet) open.clone();
  }

  /** Checks not to be proposed again. */
  @Override
  public BitSet asked() {
    return (BitSet) asked.clone();
  }

  /** Causes whose mend has been tried. */
  @Override
  public BitSet tried() {
    return (BitSet) tried.clone();
  }
}
