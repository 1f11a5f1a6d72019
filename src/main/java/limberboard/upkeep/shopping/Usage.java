package limberboard.upkeep.shopping;

import java.util.List;
import limberboard.workings.AmountOutcome;

/**
 * What one job, or one rope, uses of one material.
 *
 * @param by the job, or the rope
 * @param purpose what it is for, or empty
 * @param ropes ids of the ropes of the boat's list that it makes anew
 * @param once what doing the job once takes
 * @param working how that was found, or empty
 * @param alone what it takes in all by itself, in the material's counting unit; 0 when {@code once}
 *     is not reckoned
 * @param pieceLength the length of one piece in metres, for what is cut in pieces that must be
 *     whole; else 0
 * @param got how much of that is got for it
 */
public record Usage(
    BoughtFor by,
    String purpose,
    List<String> ropes,
    AmountOutcome once,
    String working,
    double alone,
    double pieceLength,
    Got got) {

  /** Copies the list. */
  public Usage {
    ropes = List.copyOf(ropes);
  }

  /**
   * How much of a use is got for it; the rest is the same stuff for the same thing as another use
   * on the list, and is got with that.
   *
   * @param amount in the material's counting unit
   * @param pieces the number of whole pieces in it; 0 for what is not cut in pieces
   * @param with what the rest is got with; empty when all is got for it
   */
  public record Got(double amount, long pieces, List<BoughtFor> with) {
    /** Copies the list. */
    public Got {
      with = List.copyOf(with);
    }
  }

  /** Whether the amount is known. */
  public boolean isReckoned() {
    return once instanceof AmountOutcome.Reckoned;
  }

  /** Whether it is for work of which nobody knows when it was last done. */
  public boolean isLookFirst() {
    return by instanceof Job job && job.lookFirst();
  }

  /** What is got for it, in the material's counting unit. */
  public double amount() {
    return got.amount();
  }

  /** How many whole pieces are got for it; 0 for what is not cut in pieces. */
  public long pieces() {
    return got.pieces();
  }

  /** How many whole pieces it takes by itself; 0 for what is not cut in pieces. */
  public long alonePieces() {
    return pieceLength > 0 ? Math.round(alone / pieceLength) : 0;
  }

  /** How much of it is got with something else. */
  public double shared() {
    return Math.max(0, alone - amount());
  }

  /** The same, of which so much is got for it. */
  Usage counting(double amount, long pieces, List<BoughtFor> with) {
    return new Usage(
        by, purpose, ropes, once, working, alone, pieceLength, new Got(amount, pieces, with));
  }
}
