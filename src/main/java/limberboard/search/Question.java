package limberboard.search;

import java.util.List;
import java.util.Optional;

/**
 * A text as the index is asked it.
 *
 * @param slots what it asks for, the weightiest first
 * @param says whether any of its words says something; otherwise it can only name a title
 * @param tellsOfFault whether it says that something is wrong, and does not just name something
 * @param didYouMean the text with misspelt words put right, if there were any
 */
record Question(List<Slot> slots, boolean says, boolean tellsOfFault, Optional<String> didYouMean) {
  /** Copies the slots. */
  Question {
    slots = List.copyOf(slots);
  }
}
