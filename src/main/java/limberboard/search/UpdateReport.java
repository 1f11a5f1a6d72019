package limberboard.search;

import java.util.Optional;

/**
 * What an update of the index did.
 *
 * @param added pages that were not in the index
 * @param changed pages whose text had changed
 * @param removed pages that are no longer in the library
 * @param inMemory why this process now searches a copy of the index in its own memory, because the
 *     one on disk could not be written; empty when the one on disk is used
 */
public record UpdateReport(int added, int changed, int removed, Optional<String> inMemory) {
  /** Whether the index already was as the library is. */
  public boolean unchanged() {
    return added == 0 && changed == 0 && removed == 0;
  }
}
