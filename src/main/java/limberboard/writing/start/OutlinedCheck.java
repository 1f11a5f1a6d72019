package limberboard.writing.start;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A check of an outline.
 *
 * @param id made from its question, unique in the outline
 * @param ask the question
 * @param how what was typed of how to do it
 * @param minutes how long it takes, where it was said
 * @param answers the answers, as ids
 * @param finds answer to cause id to how likely that answer then is
 */
public record OutlinedCheck(
    String id,
    String ask,
    String how,
    Optional<String> minutes,
    List<String> answers,
    Map<String, Map<String, String>> finds) {
  /** Copies the collections, in order. */
  public OutlinedCheck {
    answers = List.copyOf(answers);
    finds = Collections.unmodifiableMap(new LinkedHashMap<>(finds));
  }
}
