package limberboard.moving;

import java.util.List;

/**
 * What importing an archive would change.
 *
 * @param added files that would be new
 * @param changed files that would be other than they are
 * @param same how many files are as in the archive already
 * @param kept pages that stay as they are, because their header says whose own they are
 * @param problems what the reader of pages would say besides what it says now
 */
public record ImportPlan(
    List<String> added, List<String> changed, int same, List<String> kept, List<String> problems) {
  /** Copies the lists. */
  public ImportPlan {
    added = List.copyOf(added);
    changed = List.copyOf(changed);
    kept = List.copyOf(kept);
    problems = List.copyOf(problems);
  }

  /** Whether anything would change. */
  public boolean changesAnything() {
    return !added.isEmpty() || !changed.isEmpty();
  }
}
