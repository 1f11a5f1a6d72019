package limberboard.sharing;

import java.util.List;
import limberboard.sharing.merge.Conflict;

/** What came of a pull. */
public sealed interface PullOutcome {

  /** How many files of one's own were recorded before anything was pulled. */
  int recordedFirst();

  /**
   * The other copy had nothing new.
   *
   * @param unsent how many versions of this copy the other does not have
   */
  record UpToDate(int recordedFirst, int unsent) implements PullOutcome {}

  /**
   * What the other copy had is here now.
   *
   * @param versions how many versions came
   * @param files which files of the workspace changed, by path
   * @param merged which of them both copies had changed
   * @param kept pages that stayed as they are because they are this copy's own
   * @param unsent how many versions of this copy the other does not have
   */
  record Pulled(
      int recordedFirst,
      int versions,
      List<String> files,
      List<String> merged,
      List<String> kept,
      int unsent)
      implements PullOutcome {}

  /**
   * Both copies changed the same parts differently; no file was changed.
   *
   * @param conflicts what is to be chosen
   * @param idle choices that were given and speak of none of them
   */
  record Open(int recordedFirst, List<Conflict> conflicts, List<String> idle)
      implements PullOutcome {}
}
