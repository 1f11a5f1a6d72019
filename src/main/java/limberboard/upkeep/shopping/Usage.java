package limberboard.upkeep.shopping;

import limberboard.workings.AmountOutcome;

/**
 * What one job uses of one material.
 *
 * @param job the job
 * @param purpose what it is for, or empty
 * @param once what doing the job once takes
 * @param working how that was found, or empty
 * @param amount what it takes in all, in the material's counting unit; 0 when {@code once} is not
 *     reckoned
 * @param pieceLength the length of one piece in metres, for what is cut in pieces that must be
 *     whole; else 0
 * @param pieces the number of such pieces in all; else 0
 */
public record Usage(
    Job job,
    String purpose,
    AmountOutcome once,
    String working,
    double amount,
    double pieceLength,
    long pieces) {

  /** Whether the amount is known. */
  public boolean isReckoned() {
    return once instanceof AmountOutcome.Reckoned;
  }
}
