package limberboard.desktop.write.complete;

import java.util.List;

/**
 * What can stand in the place of what was typed of it.
 *
 * @param from where what was typed of it begins, in the plain text
 * @param to where it ends: the caret
 * @param candidates the best first; empty when nothing fits
 */
public record Completion(int from, int to, List<Candidate> candidates) {
  /** Copies the list. */
  public Completion {
    candidates = List.copyOf(candidates);
  }
}
